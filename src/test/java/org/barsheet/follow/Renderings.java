package org.barsheet.follow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.barsheet.sound.RenderedMix;
import org.barsheet.sound.SoundBank;

/** Mixes rendered from a folder of annotated music, with the true times of their beats. */
final class Renderings {

  /**
   * A mix.
   *
   * @param beats pairs of a score's second and the mix's second
   */
  record Mix(String name, Path score, Path wav, List<double[]> beats) {}

  private static final double LEAD = 1.3;

  private Renderings() {}

  static List<Mix> arrangements(Path folder, Path bankFile, Path cache) throws IOException {
    Map<String, List<Double>> beats = new LinkedHashMap<>();
    for (String line : Files.readAllLines(folder.resolve("exports/arrangements-beats.csv"))) {
      String[] cells = line.split(",", -1);
      if (!cells[0].equals("piece")) {
        beats.computeIfAbsent(cells[0], k -> new ArrayList<>()).add(Double.valueOf(cells[4]));
      }
    }
    SoundBank bank = SoundBank.read(bankFile);
    List<Mix> mixes = new ArrayList<>();
    for (Map.Entry<String, List<Double>> piece : beats.entrySet()) {
      Path file = folder.resolve("exports/arrangements/" + piece.getKey() + ".mid");
      Score score = ScoreReader.read(file);
      DoubleUnaryOperator curve = curve(piece.getKey().hashCode(), 0.05, LEAD);
      Path wav = cache.resolve(piece.getKey() + "-" + bankFile.getFileName() + ".wav");
      if (!Files.exists(wav)) {
        new RenderedMix(score, curve, bank).write(wav, 0.001, 7);
      }
      List<double[]> truth = new ArrayList<>();
      double end = score.tempo().secondsAt(score.endTick()).toDouble();
      for (double beat : piece.getValue()) {
        if (beat < end - 0.1) {
          truth.add(new double[] {beat, curve.applyAsDouble(beat)});
        }
      }
      mixes.add(new Mix(piece.getKey(), file, wav, truth));
    }
    return mixes;
  }

  static List<Mix> performances(Path folder, Path bankFile, Path cache) throws IOException {
    SoundBank bank = SoundBank.read(bankFile);
    List<Mix> mixes = new ArrayList<>();
    for (Mix played : playedFiles(folder)) {
      String name = played.name().replace(".mid", "-" + bankFile.getFileName() + ".wav");
      Path wav = cache.resolve(name);
      if (!Files.exists(wav)) {
        Score score = ScoreReader.read(played.wav());
        new RenderedMix(score, t -> t + LEAD, bank).write(wav, 0.001, 7);
      }
      List<double[]> later = new ArrayList<>();
      played.beats().forEach(beat -> later.add(new double[] {beat[0], beat[1] + LEAD}));
      mixes.add(new Mix(played.name(), played.score(), wav, later));
    }
    return mixes;
  }

  /** Played files whose score has as many beats, the file in place of a mix. */
  static List<Mix> playedFiles(Path folder) throws IOException {
    Map<String, List<Double>> beats = new LinkedHashMap<>();
    for (String line : Files.readAllLines(folder.resolve("beats.csv"))) {
      String[] cells = line.split(",", -1);
      if (!cells[0].equals("file")) {
        beats.computeIfAbsent(cells[0], k -> new ArrayList<>()).add(Double.valueOf(cells[1]));
      }
    }
    List<Mix> mixes = new ArrayList<>();
    for (String name : beats.keySet()) {
      String score = name.replace("perf/", "score/");
      List<Double> played = beats.getOrDefault(name, List.of());
      List<Double> written = beats.getOrDefault(score, List.of());
      if (name.startsWith("perf/") && played.size() == written.size()) {
        List<double[]> truth = new ArrayList<>();
        for (int i = 0; i < played.size(); i++) {
          truth.add(new double[] {written.get(i), played.get(i)});
        }
        mixes.add(new Mix(name.substring(5), folder.resolve(score), folder.resolve(name), truth));
      }
    }
    return mixes;
  }

  /** A smooth tempo that swings by a part of itself, after a lead of silence. */
  static DoubleUnaryOperator curve(long seed, double swing, double lead) {
    Random random = new Random(seed);
    double a = random.nextDouble() * 6;
    double b = random.nextDouble() * 6;
    double la = 15 + 15 * random.nextDouble();
    double lb = 40 + 40 * random.nextDouble();
    double tempo = 0.95 + 0.1 * random.nextDouble();
    return t ->
        lead
            + tempo * t
            + 0.6 * swing * la / 6.283 * (Math.sin(a + 6.283 * t / la) - Math.sin(a))
            + 0.4 * swing * lb / 6.283 * (Math.sin(b + 6.283 * t / lb) - Math.sin(b));
  }
}
