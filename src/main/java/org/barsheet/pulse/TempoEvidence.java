package org.barsheet.pulse;

/**
 * How well the onsets of a file sit on its written grid, against what chance would give.
 *
 * @param score 0 (no better than chance) to 1 (every onset on the grid)
 * @param verdict what that means
 * @param sentence the same in words and figures
 */
public record TempoEvidence(double score, Verdict verdict, String sentence) {

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
}
