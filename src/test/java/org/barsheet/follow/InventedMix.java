package org.barsheet.follow;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.barsheet.motif.ScoreSketch;
import org.barsheet.recording.Sound;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/** Invented music for harp, clarinet and violins, and recordings of it in a small room. */
public final class InventedMix {

  /** Seconds of a quarter note as written. */
  static final double BEAT = 0.5;

  private static final long SECOND = 2 * ScoreSketch.TICKS_PER_QUARTER;
  private static final int RATE = 24_000;
  private static final String[] PLAYERS = {"Orchestral Harp", "Clarinet", "Violins"};

  /** Seconds in which each instrument comes to full strength, and dies away. */
  private static final double[] ATTACK = {0.003, 0.025, 0.07};

  private static final double[] DECAY = {0.7, 4, 9};

  private InventedMix() {}

  /** Music of some seconds, moved up by semitones. */
  static Score score(long seed, int seconds, int up) {
    Random random = new Random(seed);
    ScoreSketch sketch = new ScoreSketch();
    int[] roots = new int[seconds / 2];
    for (int i = 0; i < roots.length; i++) {
      roots[i] = random.nextInt(12);
    }
    for (int player = 0; player < PLAYERS.length; player++) {
      sketch.part(PLAYERS[player]);
      long shortest = SECOND / (player == 0 ? 4 : 2);
      for (long at = 0; at < seconds * SECOND; ) {
        long length = shortest * (1 + random.nextInt(player + 2));
        int[] third = {0, 4, 7, 12};
        int root = roots[(int) (at / SECOND / 2)];
        int pitch = 72 - 7 * player + (root + 5) % 12 - 6 + third[random.nextInt(4)] + up;
        sketch.note(pitch, at, at + length * 9 / 10);
        at += length;
      }
    }
    return sketch.score();
  }

  /** The same without what begins between two seconds. */
  static Score without(Score score, int from, int to) {
    return score.withNotes(
        score.notes().stream()
            .filter(note -> note.onTick() < from * SECOND || note.onTick() >= to * SECOND)
            .toList());
  }

  /** The same with what begins between two seconds played again at once. */
  static Score twice(Score score, int from, int to) {
    List<Note> notes = new ArrayList<>();
    for (Note note : score.notes()) {
      if (note.onTick() < to * SECOND) {
        notes.add(note);
      }
      if (note.onTick() >= from * SECOND) {
        notes.add(later(note, (to - from) * SECOND));
      }
    }
    return score.withNotes(notes);
  }

  private static double second(Score score, long tick) {
    return score.tempo().secondsAt(tick).toDouble();
  }

  private static Note later(Note note, long ticks) {
    return new Note(
        note.part(), note.pitch(), note.velocity(), note.onTick() + ticks, note.offTick() + ticks);
  }

  /** A recording in which a second of the score is heard at {@code timeOf} it, with some noise. */
  static Sound of(Score score, DoubleUnaryOperator timeOf, Random random) {
    double end = timeOf.applyAsDouble(second(score, score.endTick()));
    float[] dry = new float[(int) ((end + 2) * RATE)];
    for (Note note : score.notes()) {
      double on = timeOf.applyAsDouble(second(score, note.onTick()));
      add(dry, note, on, timeOf.applyAsDouble(second(score, note.offTick())));
    }
    float[] wet = dry.clone();
    for (double echo : new double[] {0.0431, 0.0613, 0.0877, 0.1291}) {
      int late = (int) (echo * RATE);
      for (int i = late; i < wet.length; i++) {
        wet[i] += (float) (0.2 * wet[i - late]);
      }
    }
    for (int i = 0; i < wet.length; i++) {
      wet[i] = 0.2f * wet[i] + (float) (0.002 * random.nextGaussian());
    }
    return new Sound(wet, RATE);
  }

  /** Writes a recording as WAV. */
  public static void write(Score score, DoubleUnaryOperator timeOf, Path file) throws IOException {
    Sound sound = of(score, timeOf, new Random(score.notes().size()));
    ByteBuffer bytes = ByteBuffer.allocate(2 * sound.length());
    for (int i = 0; i < sound.length(); i++) {
      bytes.putShort((short) Math.round(32767 * Math.max(-1, Math.min(1, sound.at(i)))));
    }
    AudioFormat format = new AudioFormat(RATE, 16, 1, true, true);
    try (AudioInputStream stream =
        new AudioInputStream(new ByteArrayInputStream(bytes.array()), format, sound.length())) {
      AudioSystem.write(stream, AudioFileFormat.Type.WAVE, file.toFile());
    }
  }

  private static void add(float[] samples, Note note, double on, double off) {
    double turn = 2 * Math.PI * 440 * Math.pow(2, (note.pitch() - 69) / 12.0);
    for (int i = (int) Math.ceil(on * RATE);
        i < Math.min(samples.length, (off + 0.1) * RATE);
        i++) {
      double t = (double) i / RATE - on;
      double strength =
          0.2 * Math.min(1, t / ATTACK[note.part()]) * Math.exp(-t / DECAY[note.part()]);
      strength *= Math.min(1, Math.max(0, (off + 0.1 - (double) i / RATE) / 0.1));
      for (int k = 1; k <= 5; k++) {
        samples[i] += (float) (strength * Math.sin(turn * k * t) / k);
      }
    }
  }
}
