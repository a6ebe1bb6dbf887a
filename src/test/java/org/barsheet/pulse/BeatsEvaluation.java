package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.TempoRequest.Mode;
import org.barsheet.pulse.TempoRequest.Pickup;
import org.barsheet.pulse.TempoRequest.Pin;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.free.DownbeatSearch;
import org.barsheet.score.Meter;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Measures beats and downbeats (F-measure, 70 ms) on the files of a folder {@code performed} with
 * {@code beats.csv} (file, time_s, is_downbeat) and {@code manifest.csv} (file first, time
 * signatures fifth). The folder above it is named by the system property {@code evaluation.folder}.
 */
@Tag("evaluate")
class BeatsEvaluation {

  private static final double TOLERANCE = 0.07;
  private static final int BARS_PER_PIN = 16;

  private final Path folder =
      Path.of(System.getProperty("evaluation.folder", "")).resolve("performed");
  private final Map<String, List<double[]>> sums = new TreeMap<>();

  /** Beats as annotated. */
  private record Truth(List<Double> beats, List<Double> downbeats) {
    double median() {
      List<Double> lengths = new ArrayList<>();
      for (int i = 1; i < beats.size(); i++) {
        lengths.add(beats.get(i) - beats.get(i - 1));
      }
      Collections.sort(lengths);
      return lengths.get(lengths.size() / 2);
    }

    List<Pin> pins() {
      List<Pin> pins = new ArrayList<>();
      for (int bar = 0; bar < downbeats.size(); bar += BARS_PER_PIN) {
        long milliseconds = Math.round(downbeats.get(bar) * 1000);
        pins.add(new Pin(bar + 1, Seconds.of(milliseconds, 1000)));
      }
      return pins;
    }
  }

  @Test
  void beats_and_downbeats_of_written_and_played_files() throws IOException {
    Map<String, Truth> truths = truths();
    for (String line : Files.readAllLines(folder.resolve("manifest.csv"))) {
      String[] cells = line.split(",", -1);
      Truth truth = truths.get(cells[0]);
      if (truth != null) {
        measure(cells[0], meter(cells[4]), truth);
      }
    }
    sums.forEach((what, figures) -> System.out.println("mean " + what + " " + mean(figures)));
    assertThat(sums).isNotEmpty();
  }

  private void measure(String file, Meter meter, Truth truth) {
    Score score = ScoreReader.read(folder.resolve(file));
    String kind = file.substring(0, file.indexOf('/'));
    Optional<Meter> known = Optional.of(meter);
    Optional<BigFraction> bpm = Optional.of(BigFraction.of(Math.round(60 / truth.median())));
    measure(
        kind + " auto",
        file,
        score,
        truth,
        request(Optional.empty(), Optional.empty(), false, truth));
    if (kind.equals("perf")) {
      measure(kind + " bpm and meter", file, score, truth, request(known, bpm, false, truth));
      measure(
          kind + " pins",
          file,
          score,
          truth,
          request(Optional.empty(), Optional.empty(), true, truth));
      measure(
          kind + " pins and meter",
          file,
          score,
          truth,
          request(known, Optional.empty(), true, truth));
      measureDownbeatsAlone(kind + " downbeats of true beats", file, score, truth);
    }
  }

  private static TempoRequest request(
      Optional<Meter> meter, Optional<BigFraction> bpm, boolean pinned, Truth truth) {
    return new TempoRequest(
        Mode.AUTO,
        1,
        Pickup.AUTO,
        Optional.empty(),
        pinned ? truth.pins() : List.of(),
        meter,
        bpm,
        Optional.empty());
  }

  private void measure(String what, String file, Score score, Truth truth, TempoRequest request) {
    long start = System.nanoTime();
    Music music = MusicFinder.follow(score, request);
    double seconds = (System.nanoTime() - start) / 1e9;
    List<Beat> beats = music.beats();
    double[] figures = {
      FMeasure.of(truth.beats(), times(beats), TOLERANCE),
      FMeasure.of(
          truth.downbeats(),
          times(beats.stream().filter(BeatsEvaluation::isFirstOfBar).toList()),
          TOLERANCE),
      seconds
    };
    report(what, file, figures);
    if (what.endsWith("auto")) {
      System.out.println("    " + music.sentence());
      music.doubts().forEach(doubt -> System.out.println("    " + doubt.sentence()));
    }
  }

  /** A pickup begins on no first beat. */
  private static boolean isFirstOfBar(Beat beat) {
    return beat.isDownbeat() && beat.bar().number() > 0;
  }

  private void measureDownbeatsAlone(String what, String file, Score score, Truth truth) {
    List<Integer> places =
        new DownbeatSearch(Playing.of(score), truth.beats(), List.of(2, 3, 4)).search().places();
    List<Double> found = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      if (places.get(i) == 0) {
        found.add(truth.beats().get(i));
      }
    }
    report(what, file, FMeasure.of(truth.downbeats(), found, TOLERANCE));
  }

  private void report(String what, String file, double... figures) {
    sums.computeIfAbsent(what, key -> new ArrayList<>()).add(figures);
    System.out.println(what + " " + file + " " + mean(List.of(figures)));
  }

  private static String mean(List<double[]> figures) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < figures.get(0).length; i++) {
      int column = i;
      double mean = figures.stream().mapToDouble(row -> row[column]).average().orElseThrow();
      text.append(String.format(Locale.ROOT, "%.3f ", mean));
    }
    return text + "(" + figures.size() + ")";
  }

  private static List<Double> times(List<Beat> beats) {
    return beats.stream().map(beat -> beat.seconds().toDouble()).toList();
  }

  private static Meter meter(String signatures) {
    String[] parts = signatures.split("[^0-9]+", -1);
    return new Meter(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }

  private Map<String, Truth> truths() throws IOException {
    return Files.readAllLines(folder.resolve("beats.csv")).stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .collect(
            Collectors.groupingBy(
                cells -> cells[0],
                TreeMap::new,
                Collectors.collectingAndThen(Collectors.toList(), BeatsEvaluation::truth)));
  }

  private static Truth truth(List<String[]> rows) {
    return new Truth(
        rows.stream().map(row -> Double.valueOf(row[1])).toList(),
        rows.stream()
            .filter(row -> row[2].equals("1"))
            .map(row -> Double.valueOf(row[1]))
            .toList());
  }
}
