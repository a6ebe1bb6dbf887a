package org.barsheet.motif;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.barsheet.motif.ComposedMotif.Tone;
import org.barsheet.score.Score;

/**
 * Invented counterpoint in four voices that enter with a subject again and again: with a short
 * subject in long notes, or with one that has two large leaps, which tonal answers change at once.
 */
final class ComposedFugue {

  private static final double TICKS = ScoreSketch.TICKS_PER_QUARTER / 4.0;
  private static final int BAR = 16;
  private static final int ENTRIES = 20;
  private static final int[] OCTAVES = {1, 0, -1, -2};

  private record Played(int voice, int pitch, double on, double off) {}

  private final SplittableRandom random;
  private final boolean longNotes;
  private final boolean minor;
  private final List<Played> notes = new ArrayList<>();
  private final List<Arrangement.Planted> planted = new ArrayList<>();

  private ComposedFugue(long seed, boolean longNotes) {
    this.random = new SplittableRandom(seed);
    this.longNotes = longNotes;
    this.minor = random.nextBoolean();
  }

  /** The fugue of a seed, each voice a part or all in one. */
  static Arrangement of(long seed, boolean longNotes, boolean merged) {
    return new ComposedFugue(seed, longNotes).composed(seed, merged);
  }

  private Arrangement composed(long seed, boolean merged) {
    ComposedMotif subject = longNotes ? slow() : leaping();
    double at = BAR;
    enter(subject, "first", 0, 0);
    for (int entry = 0; entry < ENTRIES; entry++) {
      at += Math.ceil(subject.length() / BAR) * BAR + BAR * random.nextInt(2);
      answer(subject, entry % 4, at);
    }
    counterpoint(at + 4 * BAR);
    String kind = longNotes ? "slow" : "leaping";
    return new Arrangement(
        "fugue " + seed + " " + kind + (merged ? " merged" : ""),
        kind + (merged ? " merged" : ""),
        score(merged),
        Map.of("subject", subject.line(0, minor)),
        planted,
        List.of());
  }

  /** Five to seven notes, most of them halves and wholes. */
  private ComposedMotif slow() {
    return ComposedMotif.compose(random, random.nextInt(5, 8), new int[] {8, 8, 8, 16, 4, 12});
  }

  /** Seven to ten notes with a fourth down and a ninth up among them. */
  private ComposedMotif leaping() {
    ComposedMotif line =
        ComposedMotif.compose(random, random.nextInt(7, 11), new int[] {8, 4, 4, 2, 2});
    int fourth = 1;
    return line.stepped(
        i -> {
          int straight = line.notes().get(i).step();
          int wanted = i == 0 ? 3 : i == fourth ? 0 : 8 - (i - 2);
          return wanted - straight;
        });
  }

  private void answer(ComposedMotif subject, int kind, double at) {
    int voice = random.nextInt(4);
    int changed = 1 + random.nextInt(subject.size() - 1);
    int step = random.nextBoolean() ? 1 : -1;
    switch (kind) {
      case 0 -> enter(subject, "real", voice, at);
      case 1 -> enter(subject.moved(random.nextInt(1, 7), 0), "mode", voice, at);
      case 2 ->
          enter(
              longNotes
                  ? subject.moved(4, 0).stepped(i -> i >= changed ? step : 0)
                  : subject.moved(4, 0).stepped(i -> i == 1 ? -1 : 0),
              longNotes ? "one step" : "both leaps",
              voice,
              at);
      default ->
          enter(
              longNotes
                  ? subject.moved(4, 0).stepped(i -> i == 0 ? -1 : 0)
                  : subject.moved(4, 0).stepped(i -> i == 1 ? -1 : i >= 2 ? 1 : 0),
              longNotes ? "first note" : "both leaps by more",
              voice,
              at);
    }
  }

  private void enter(ComposedMotif line, String form, int voice, double at) {
    for (Tone note : line.notes()) {
      int pitch = note.pitch(0, minor) + 12 * OCTAVES[voice];
      notes.add(new Played(voice, pitch, at + note.on(), at + note.on() + note.length()));
    }
    planted.add(
        new Arrangement.Planted("subject", form, at / 4, (at + line.length()) / 4, name(voice)));
  }

  private static String name(int voice) {
    return "Voice " + (voice + 1);
  }

  /** Running eighths, quarters and sixteenths wherever a voice has no entry. */
  private void counterpoint(double end) {
    List<Played> entries = List.copyOf(notes);
    for (int voice = 0; voice < 4; voice++) {
      int own = voice;
      int step = 0;
      for (double at = BAR; at < end; ) {
        double length = new int[] {1, 1, 2, 2, 2, 2, 4, 4, 8}[random.nextInt(9)];
        double from = at;
        double to = at + length;
        if (entries.stream().noneMatch(n -> n.voice() == own && n.on() < to && n.off() > from)) {
          int pitch = new Tone(0, 1, step, 0).pitch(0, minor) + 12 * OCTAVES[voice];
          notes.add(new Played(voice, pitch, from, to));
        }
        step = Math.max(-6, Math.min(8, step + random.nextInt(-2, 3)));
        at = to;
      }
    }
  }

  private Score score(boolean merged) {
    ScoreSketch sketch = new ScoreSketch();
    for (int voice = 0; voice < 4; voice++) {
      if (voice == 0 || !merged) {
        sketch.part(name(voice));
      }
      for (Played note : notes) {
        if (note.voice() == voice) {
          sketch.note(note.pitch(), Math.round(note.on() * TICKS), Math.round(note.off() * TICKS));
        }
      }
    }
    return sketch.score();
  }
}
