package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.barsheet.pulse.evidence.GridConcentration;
import org.barsheet.score.Division;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;

/**
 * How well the onsets of a file sit on its written grid, against what chance would give.
 *
 * @param score 0 (no better than chance) to 1 (every onset on the grid)
 * @param verdict what that means
 * @param sentence the same in words and figures
 * @param weakStretches where the onsets do not keep to the grid, in order
 * @param parts the same for each part that has notes enough
 */
public record TempoEvidence(
    double score,
    Verdict verdict,
    String sentence,
    List<WeakStretch> weakStretches,
    List<PartScore> parts) {

  /** Above this the written grid is trusted. */
  static final double TRUSTED = 0.5;

  /** Below this it says nothing. */
  static final double MEANINGLESS = 0.2;

  /** Onsets that keep this close to a grid are played by it, though none sits on it. */
  static final double PLAYED_BY_GRID = 0.4;

  /** Where more of the piece than this keeps to no grid, the written tempo is untrue. */
  private static final double MOSTLY = 0.5;

  private static final int WINDOW_QUARTERS = 32;

  public TempoEvidence {
    weakStretches = List.copyOf(weakStretches);
    parts = List.copyOf(parts);
  }

  /** Evidence of the whole file alone. */
  public TempoEvidence(double score, Verdict verdict, String sentence) {
    this(score, verdict, sentence, List.of(), List.of());
  }

  /** What the evidence says of the written tempo. */
  public enum Verdict {
    /** Onsets sit on the grid: the written tempo is true. */
    TRUE,
    /** Partly on the grid. */
    MIXED,
    /** No better than chance: the written tempo says nothing about the playing. */
    UNTRUE,
    /** Too few notes, or a division of real time: nothing to judge by. */
    NONE
  }

  /**
   * A stretch whose onsets do not keep to the written grid.
   *
   * @param fromTick where it begins
   * @param toTick where it ends
   */
  public record WeakStretch(long fromTick, long toTick) {}

  /**
   * The evidence of one part.
   *
   * @param part the part
   * @param score as in {@link TempoEvidence#score}
   */
  public record PartScore(Part part, double score) {}

  /** Weighs a score's onsets, over the whole file, every 32 quarter notes and part by part. */
  public static TempoEvidence of(Score score) {
    if (!(score.division() instanceof Division.PerQuarter division)) {
      return new TempoEvidence(
          0, Verdict.NONE, "the file counts real time, not beats, so it has no tempo");
    }
    int factor = score.ticksPerQuarter() / division.ticks();
    long[] onsets = onsets(score.notes(), factor);
    if (onsets.length < GridConcentration.FEWEST_ONSETS) {
      return new TempoEvidence(0, Verdict.NONE, tooFew(onsets.length));
    }
    double whole = GridConcentration.score(onsets, division.ticks());
    double closeness = GridConcentration.closeness(onsets, division.ticks());
    List<WeakStretch> weak = weakStretches(onsets, division.ticks(), factor);
    Verdict verdict = verdict(whole, closeness, weakShare(weak, score.endTick()), weak);
    List<PartScore> parts = parts(score, division, factor);
    String sentence = sentence(verdict, onsets.length);
    return new TempoEvidence(whole, verdict, sentence, weak, parts);
  }

  /** The same onsets where they are found to keep to another pulse. */
  TempoEvidence contradictedBy(double beatsPerMinute) {
    String steady =
        "the notes follow a steady pulse of "
            + Question.bpm(beatsPerMinute)
            + " bpm, not the written beats";
    return new TempoEvidence(score, Verdict.UNTRUE, steady, List.of(), parts);
  }

  /** The same evidence in other words. */
  TempoEvidence saying(String other) {
    return new TempoEvidence(score, verdict, other, weakStretches, parts);
  }

  private static String tooFew(int onsets) {
    return onsets == 0
        ? "there are no notes to judge the tempo by"
        : "too few notes ("
            + onsets
            + (onsets == 1 ? " note" : " notes")
            + ") to judge the tempo by";
  }

  private static Verdict verdict(
      double whole, double closeness, double weakShare, List<WeakStretch> weak) {
    if (whole >= TRUSTED) {
      return weak.isEmpty() ? Verdict.TRUE : Verdict.MIXED;
    }
    boolean partlyOn = whole > MEANINGLESS || closeness >= PLAYED_BY_GRID;
    return partlyOn && weakShare < MOSTLY ? Verdict.MIXED : Verdict.UNTRUE;
  }

  private static double weakShare(List<WeakStretch> weak, long endTick) {
    long ticks = weak.stream().mapToLong(one -> one.toTick() - one.fromTick()).sum();
    return (double) ticks / Math.max(1, endTick);
  }

  private static String sentence(Verdict verdict, int onsets) {
    String figures = " (" + onsets + (onsets == 1 ? " note)" : " notes)");
    return switch (verdict) {
      case TRUE -> "the notes fall on the written beats" + figures;
      case MIXED -> "the notes follow the written beats only in part" + figures;
      case UNTRUE -> "the notes don't follow the written beats" + figures;
      case NONE -> "nothing to judge the tempo by";
    };
  }

  private static List<PartScore> parts(Score score, Division.PerQuarter division, int factor) {
    List<PartScore> parts = new ArrayList<>();
    List<List<Note>> byPart = score.notesByPart();
    for (Part part : score.parts()) {
      long[] onsets = onsets(byPart.get(part.index()), factor);
      if (onsets.length >= GridConcentration.FEWEST_ONSETS) {
        parts.add(new PartScore(part, GridConcentration.score(onsets, division.ticks())));
      }
    }
    return parts;
  }

  /** Different onsets in ticks of the file, in order. */
  private static long[] onsets(List<Note> notes, int factor) {
    return notes.stream().mapToLong(note -> note.onTick() / factor).sorted().distinct().toArray();
  }

  private static List<WeakStretch> weakStretches(long[] onsets, int ticksPerQuarter, int factor) {
    long window = (long) WINDOW_QUARTERS * ticksPerQuarter;
    List<WeakStretch> weak = new ArrayList<>();
    int from = 0;
    while (from < onsets.length) {
      long start = onsets[from] / window * window;
      int to = from;
      while (to < onsets.length && onsets[to] < start + window) {
        to++;
      }
      if (isWeak(Arrays.copyOfRange(onsets, from, to), ticksPerQuarter)) {
        addTo(weak, start * factor, (start + window) * factor);
      }
      from = to;
    }
    return weak;
  }

  private static boolean isWeak(long[] onsets, int ticksPerQuarter) {
    return onsets.length >= GridConcentration.FEWEST_ONSETS
        && GridConcentration.score(onsets, ticksPerQuarter) < MEANINGLESS
        && GridConcentration.closeness(onsets, ticksPerQuarter) < PLAYED_BY_GRID;
  }

  private static void addTo(List<WeakStretch> weak, long from, long to) {
    WeakStretch last = weak.isEmpty() ? null : weak.get(weak.size() - 1);
    if (last != null && last.toTick() == from) {
      weak.set(weak.size() - 1, new WeakStretch(last.fromTick(), to));
    } else {
      weak.add(new WeakStretch(from, to));
    }
  }
}
