package org.barsheet.align.places;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Lands;

/**
 * One way of showing a reveal: how many of its photographs, and each for how many frames.
 *
 * @param asked how many photographs the reveal asks for
 * @param shown how many of them are shown, 1 to {@code asked}
 * @param framesPerPhotograph frames a photograph is shown, 1 or more
 * @param landing which of the shown photographs stands on the landing frame, from 1
 */
public record PhotographRun(int asked, int shown, int framesPerPhotograph, int landing) {

  /**
   * The least share of its photographs a squeezed reveal is shown with, one in three. Fewer would
   * make its steps more than three times as large: another movement. Our own choice, no source.
   */
  static final int LEAST_SHARE = 3;

  public PhotographRun {
    if (shown < 1 || shown > asked || framesPerPhotograph < 1 || landing < 1 || landing > shown) {
      throw new IllegalArgumentException(
          "a run shows some of its photographs, one of them landing");
    }
  }

  /** The reveal as the plan asks for it. */
  public static PhotographRun asAsked(Reveal reveal) {
    return new PhotographRun(
        reveal.photographs(),
        reveal.photographs(),
        reveal.framesPerPhotograph(),
        reveal.landingPhotograph());
  }

  /**
   * Every way of showing a reveal, the one asked first: then each photograph for fewer frames, then
   * on ones with fewer photographs, down to one in three.
   */
  public static List<PhotographRun> waysToShow(Reveal reveal) {
    List<PhotographRun> ways = new ArrayList<>();
    int photographs = reveal.photographs();
    for (int frames = reveal.framesPerPhotograph(); frames >= 1; frames--) {
      ways.add(new PhotographRun(photographs, photographs, frames, reveal.landingPhotograph()));
    }
    int least = (photographs + LEAST_SHARE - 1) / LEAST_SHARE;
    for (int shown = photographs - 1; shown >= least; shown--) {
      ways.add(new PhotographRun(photographs, shown, 1, landingOf(reveal, shown)));
    }
    return List.copyOf(ways);
  }

  private static int landingOf(Reveal reveal, int shown) {
    if (reveal.lands() == Lands.FULLY_OPEN) {
      return shown;
    }
    int wanted = reveal.landingPhotograph();
    int landing = 1;
    while (photograph(reveal.photographs(), shown, landing) < wanted) {
      landing++;
    }
    return landing;
  }

  /**
   * Which photograph of a movement stands at a step when fewer are shown: the {@code step}-th of
   * {@code shown} steps is photograph {@code round(step × asked / shown)}, a half rounded up.
   */
  public static int photograph(int asked, int shown, int step) {
    return (int) ((2L * step * asked + shown) / (2L * shown));
  }

  /** The photograph, of those asked for, that stands at a step from 1 to {@code shown}. */
  public int photographAt(int step) {
    return photograph(asked, shown, step);
  }

  /** Frames from the first moved photograph to the landing frame. */
  public long before() {
    return (long) (landing - 1) * framesPerPhotograph;
  }

  /** Frames from the landing frame to the end of the last photograph's exposure. */
  public long from() {
    return (long) (shown - landing + 1) * framesPerPhotograph;
  }

  /** Frames from the first moved photograph to the end of the last one's exposure. */
  public long frames() {
    return (long) shown * framesPerPhotograph;
  }
}
