package org.barsheet.exposure;

import org.barsheet.align.places.PhotographRun;
import org.barsheet.input.Prose;
import org.barsheet.plan.Reveal;

/** Says how a squeezed reveal is shown. */
public final class SqueezeWords {

  private SqueezeWords() {}

  /** {@code on ones instead of twos}, {@code 21 of 30 photographs, on ones}. */
  static String of(Reveal reveal, PhotographRun way, int shown) {
    String rate = on(way.framesPerPhotograph());
    if (shown >= reveal.photographs()) {
      return rate + " instead of " + word(reveal.framesPerPhotograph());
    }
    return shown + " of " + Prose.count(reveal.photographs(), "photograph") + ", " + rate;
  }

  public static String on(int frames) {
    return "on " + word(frames);
  }

  private static String word(int frames) {
    return switch (frames) {
      case 1 -> "ones";
      case 2 -> "twos";
      case 3 -> "threes";
      case 4 -> "fours";
      default -> Prose.count(frames, "frame") + " each";
    };
  }
}
