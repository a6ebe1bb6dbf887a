package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;

/**
 * Counts how fast openings open, or close, one after another. WCAG 2.3.1 (level A) allows no more
 * than three flashes in any one second; a flash is a pair of opposing changes. Openings of the
 * whole picture are counted together, since staggered rectangles add up. Times are known here,
 * brightness and area are not: this warns and never certifies.
 */
final class FlashRule {

  /** Flashes that WCAG 2.3.1 allows within a second. */
  private static final int ALLOWED = 3;

  private static final Seconds ONE_SECOND = new Seconds(BigFraction.ONE);

  /** How bad a stretch is. */
  enum Verdict {
    /** One more than allowed in less than a second. */
    OVER,
    /** One more than allowed in exactly a second. */
    AT_THE_LIMIT
  }

  /**
   * A stretch of changes that come too fast.
   *
   * @param verdict how bad its worst part is
   * @param firstFrame frame of its first change
   * @param lastFrame frame of its last change
   * @param changes how many there are in it
   */
  record Stretch(Verdict verdict, long firstFrame, long lastFrame, int changes) {}

  private FlashRule() {}

  /**
   * Every stretch in which four changes follow one another within a second.
   *
   * @param frames of the changes, in order
   */
  static List<Stretch> check(List<Long> frames, FrameRate rate) {
    List<Stretch> stretches = new ArrayList<>();
    int lastOfStretch = -1;
    for (int i = 0; i + ALLOWED < frames.size(); i++) {
      int last = i + ALLOWED;
      int against =
          rate.frameDuration().times(frames.get(last) - frames.get(i)).compareTo(ONE_SECOND);
      if (against > 0) {
        continue;
      }
      Verdict verdict = against < 0 ? Verdict.OVER : Verdict.AT_THE_LIMIT;
      Stretch here = new Stretch(verdict, frames.get(i), frames.get(last), ALLOWED + 1);
      if (i <= lastOfStretch) {
        here = joined(stretches.remove(stretches.size() - 1), here, last - lastOfStretch);
      }
      stretches.add(here);
      lastOfStretch = last;
    }
    return List.copyOf(stretches);
  }

  private static Stretch joined(Stretch one, Stretch next, int more) {
    Verdict worst =
        one.verdict() == Verdict.OVER || next.verdict() == Verdict.OVER
            ? Verdict.OVER
            : Verdict.AT_THE_LIMIT;
    return new Stretch(worst, one.firstFrame(), next.lastFrame(), one.changes() + more);
  }
}
