package org.barsheet.workbook.exposure;

/**
 * A row of the exposure sheet.
 *
 * @param kind what it shows
 * @param shot index of its shot
 * @param frame the film frame it shows; of a summary the first frame folded away
 * @param frames how many frames it stands for: 1, of a summary all that are folded away
 * @param height in points; 0 while folded away
 */
public record ExposureRow(Kind kind, int shot, long frame, long frames, double height) {

  enum Kind {
    /** The name of a shot, at its start and again on each page it goes on. */
    SHOT,
    /** What is to know of the shot, below its name. */
    SHOT_DETAILS,
    /** What stays the same throughout the shot, below that at its start. */
    SHOT_THROUGHOUT,
    /** Says how many frames are folded away below it. */
    SUMMARY,
    /** One frame. */
    FRAME,
    /** One frame, folded away because nothing moves. */
    FOLDED
  }

  public boolean isFrame() {
    return kind == Kind.FRAME || kind == Kind.FOLDED;
  }

  /** Whether it stands below its shot's heading. */
  public boolean isInShot() {
    return kind.compareTo(Kind.SHOT_THROUGHOUT) > 0;
  }
}
