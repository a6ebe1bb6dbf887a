package org.barsheet.align;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Lands;

/**
 * One way of showing a reveal: how many of its pictures, and each for how many frames.
 *
 * @param asked how many pictures the reveal asks for
 * @param shown how many of them are shown, 1 to {@code asked}
 * @param framesPerPicture frames a picture is shown, 1 or more
 * @param landing which of the shown pictures stands on the landing frame, from 1
 */
public record PictureRun(int asked, int shown, int framesPerPicture, int landing) {

  /**
   * The least share of its pictures a squeezed reveal is shown with, one in three. Fewer would make
   * its steps more than three times as large: another movement. Our own choice, no source.
   */
  static final int LEAST_SHARE = 3;

  public PictureRun {
    if (shown < 1 || shown > asked || framesPerPicture < 1 || landing < 1 || landing > shown) {
      throw new IllegalArgumentException("a run shows some of its pictures, one of them landing");
    }
  }

  /** The reveal as the plan asks for it. */
  public static PictureRun asAsked(Reveal reveal) {
    return new PictureRun(
        reveal.pictures(), reveal.pictures(), reveal.framesPerPicture(), reveal.landingPicture());
  }

  /**
   * Every way of showing a reveal, the one asked first: then each picture for fewer frames, then on
   * ones with fewer pictures, down to one in three.
   */
  public static List<PictureRun> waysToShow(Reveal reveal) {
    List<PictureRun> ways = new ArrayList<>();
    int pictures = reveal.pictures();
    for (int frames = reveal.framesPerPicture(); frames >= 1; frames--) {
      ways.add(new PictureRun(pictures, pictures, frames, reveal.landingPicture()));
    }
    int least = (pictures + LEAST_SHARE - 1) / LEAST_SHARE;
    for (int shown = pictures - 1; shown >= least; shown--) {
      ways.add(new PictureRun(pictures, shown, 1, landingOf(reveal, shown)));
    }
    return List.copyOf(ways);
  }

  private static int landingOf(Reveal reveal, int shown) {
    if (reveal.lands() == Lands.FULLY_OPEN) {
      return shown;
    }
    int wanted = reveal.landingPicture();
    int landing = 1;
    while (picture(reveal.pictures(), shown, landing) < wanted) {
      landing++;
    }
    return landing;
  }

  /**
   * Which picture of a movement stands at a step when fewer are shown: the {@code step}-th of
   * {@code shown} steps is picture {@code round(step × asked / shown)}, a half rounded up.
   */
  public static int picture(int asked, int shown, int step) {
    return (int) ((2L * step * asked + shown) / (2L * shown));
  }

  /** The picture, of those asked for, that stands at a step from 1 to {@code shown}. */
  public int pictureAt(int step) {
    return picture(asked, shown, step);
  }

  /** Frames from the first moved picture to the landing frame. */
  public long before() {
    return (long) (landing - 1) * framesPerPicture;
  }

  /** Frames from the landing frame to the end of the last picture's exposure. */
  public long from() {
    return (long) (shown - landing + 1) * framesPerPicture;
  }

  /** Frames from the first moved picture to the end of the last one's exposure. */
  public long frames() {
    return (long) shown * framesPerPicture;
  }
}
