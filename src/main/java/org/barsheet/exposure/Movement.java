package org.barsheet.exposure;

import java.math.BigDecimal;
import java.util.List;
import org.barsheet.artwork.Measure;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Slow;

/**
 * A movement to photograph once, however many reveals show its pictures.
 *
 * @param name permanent, the first word of its pictures' names
 * @param model what is under the camera
 * @param openings openings whose reveals show it, in story order; the first one is measured
 * @param measure how far it goes, and in which unit
 * @param slow where it is slow, seen as it opens
 * @param evenIn what grows evenly
 * @param pictures picture 0 and the moved ones, in order
 */
public record Movement(
    String name,
    String model,
    List<String> openings,
    Measure measure,
    Slow slow,
    EvenIn evenIn,
    List<MovedPicture> pictures) {

  public Movement {
    openings = List.copyOf(openings);
    pictures = List.copyOf(pictures);
  }

  /**
   * Works out a movement picture by picture.
   *
   * @param name permanent name
   * @param first the opening it is measured by
   * @param openings names of all openings whose reveals show it
   * @param moved how many moved pictures, 1 or more
   */
  public static Movement of(
      String name,
      Opening first,
      List<String> openings,
      Artwork artwork,
      Hand hand,
      Slow slow,
      EvenIn evenIn,
      int moved) {
    Measure measure = Measure.of(first, artwork);
    List<MovedPicture> pictures =
        new MovementMeasures(measure, first.heldBy(), hand).pictures(name, slow, evenIn, moved);
    return new Movement(name, first.model(), openings, measure, slow, evenIn, pictures);
  }

  /** How high its free edge comes above the table in millimetres, 0 where it stays on it. */
  public double highest() {
    return pictures.stream()
        .flatMap(picture -> picture.measures().height().stream())
        .mapToDouble(BigDecimal::doubleValue)
        .max()
        .orElse(0);
  }

  /** Its moved pictures: all but picture 0. */
  public List<MovedPicture> moved() {
    return pictures.subList(1, pictures.size());
  }

  /**
   * One picture of it.
   *
   * @param picture which
   * @param progress share of the movement done, 0 to 1
   * @param measures what the hand sets for it
   */
  public record MovedPicture(Picture picture, double progress, PictureMeasures measures) {

    /** Whether the hand has nothing to move, so that it looks like the picture before. */
    public boolean isLikeBefore() {
      return picture.number() > 0 && measures.step().signum() == 0;
    }
  }
}
