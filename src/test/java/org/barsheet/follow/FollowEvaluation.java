package org.barsheet.follow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.recording.SoundReader;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Prints how exactly beats are found in recordings that a sound bank plays: of the arrangements in
 * a folder under tempo curves of 5 %, and of its performances, by their scores. Properties: {@code
 * evaluation.folder}, {@code evaluation.bank}, {@code evaluation.renderings} (a folder that keeps
 * what was rendered) and {@code evaluation.from}, {@code evaluation.to} (pieces of each kind, from
 * 0).
 */
@Tag("evaluate")
final class FollowEvaluation {

  private static final double HALF_A_FRAME = 1 / 48.0;

  private final List<Double> errors = new ArrayList<>();
  private int off;
  private int offAndMarked;
  private int rightAndMarked;

  private static Path path(String property) {
    return Path.of(System.getProperty("evaluation." + property));
  }

  @Test
  void arrangements() throws IOException {
    Path cache = Files.createDirectories(path("renderings"));
    print(Renderings.arrangements(path("folder"), path("bank"), cache));
  }

  @Test
  void performances() throws IOException {
    Path cache = Files.createDirectories(path("renderings"));
    print(Renderings.performances(path("folder").resolve("performed"), path("bank"), cache));
  }

  @Test
  void played_files() throws IOException {
    Path folder = path("folder").resolve(System.getProperty("evaluation.performed", "performed"));
    for (Renderings.Mix mix : Renderings.playedFiles(folder)) {
      Score score = ScoreReader.read(mix.score());
      Score performance = ScoreReader.read(mix.wav());
      long start = System.nanoTime();
      Followed followed = PlayedFollower.follow(score, performance);
      count(mix, followed, (System.nanoTime() - start) / 1e9);
    }
    printAll();
  }

  private void print(List<Renderings.Mix> all) {
    int from = Integer.getInteger("evaluation.from", 0);
    int to = Math.min(all.size(), Integer.getInteger("evaluation.to", all.size()));
    for (Renderings.Mix mix : all.subList(from, to)) {
      Score score = ScoreReader.read(mix.score());
      long start = System.nanoTime();
      Followed followed = RecordingFollower.follow(score, SoundReader.read(mix.wav()));
      count(mix, followed, (System.nanoTime() - start) / 1e9);
    }
    printAll();
  }

  private void count(Renderings.Mix mix, Followed followed, double seconds) {
    List<Double> own = new ArrayList<>();
    for (double[] beat : mix.beats()) {
      double error = Math.abs(followed.secondsAt(beat[0]) - beat[1]);
      own.add(error);
      count(error, followed.confidenceAt(beat[0]) < 0.5);
    }
    errors.addAll(own);
    System.out.printf(
        "%-26s %s, %d differences, %.1f s%n",
        mix.name(), words(own), followed.differences().size(), seconds);
  }

  private void printAll() {
    System.out.printf(
        "all: %s; marked: %.3f of those off by a frame, %.3f of the others%n",
        words(errors),
        (double) offAndMarked / Math.max(1, off),
        (double) rightAndMarked / Math.max(1, errors.size() - off));
  }

  private void count(double error, boolean marked) {
    boolean isOff = error > 2 * HALF_A_FRAME;
    off += isOff ? 1 : 0;
    offAndMarked += isOff && marked ? 1 : 0;
    rightAndMarked += !isOff && marked ? 1 : 0;
  }

  private static String words(List<Double> errors) {
    List<Double> sorted = errors.stream().sorted().toList();
    return String.format(
        "%d beats, median %.1f ms, within half a frame %.3f, a frame %.3f, 70 ms %.3f, over 200 ms %.4f",
        sorted.size(),
        1000 * sorted.get(sorted.size() / 2),
        share(sorted, HALF_A_FRAME),
        share(sorted, 2 * HALF_A_FRAME),
        share(sorted, 0.07),
        1 - share(sorted, 0.2));
  }

  private static double share(List<Double> errors, double within) {
    return (double) errors.stream().filter(error -> error <= within).count() / errors.size();
  }
}
