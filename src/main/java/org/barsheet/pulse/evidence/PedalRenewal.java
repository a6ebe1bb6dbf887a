package org.barsheet.pulse.evidence;

import java.util.Arrays;
import org.barsheet.score.Score;

/**
 * How clearly the damper pedal is renewed for what sounds at a time. Players lift it as a new
 * harmony sounds and press it again shortly after (legato pedalling, common practice, no source),
 * so a press tells of a beat or a bar just before it.
 */
final class PedalRenewal {

  private static final double TOGETHER_SECONDS = 0.06;
  private static final double SOON_SECONDS = 0.2;
  private static final double LATE_SECONDS = 0.35;
  private static final double TOGETHER = 0.5;
  private static final double LATE = 0.7;

  private final double[] presses;

  private PedalRenewal(double[] presses) {
    this.presses = presses;
  }

  static PedalRenewal of(Score score) {
    return new PedalRenewal(
        score.pedalTicks().stream()
            .mapToDouble(tick -> score.tempo().secondsAt(tick).toDouble())
            .toArray());
  }

  /** From 0 (the pedal stays as it is) to 1 (pressed 0.06 to 0.2 s after the time). */
  double at(double seconds) {
    if (isPressed(seconds + TOGETHER_SECONDS, seconds + SOON_SECONDS)) {
      return 1;
    }
    if (isPressed(seconds + SOON_SECONDS, seconds + LATE_SECONDS)) {
      return LATE;
    }
    return isPressed(seconds - TOGETHER_SECONDS, seconds + TOGETHER_SECONDS) ? TOGETHER : 0;
  }

  private boolean isPressed(double from, double to) {
    int place = Arrays.binarySearch(presses, from);
    int next = place >= 0 ? place : -place - 1;
    return next < presses.length && presses[next] < to;
  }
}
