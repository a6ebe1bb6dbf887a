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
 * A movement to photograph once, however many reveals show its photographs.
 *
 * @param name permanent, the first word of its photographs' names
 * @param model what is under the camera
 * @param openings openings whose reveals show it, in story order; the first one is measured
 * @param measure how far it goes, and in which unit
 * @param slow where it is slow, seen as it opens
 * @param evenIn what grows evenly
 * @param photographs photograph 0 and the moved ones, in order
 */
public record Movement(
    String name,
    String model,
    List<String> openings,
    Measure measure,
    Slow slow,
    EvenIn evenIn,
    List<MovedPhotograph> photographs) {

  public Movement {
    openings = List.copyOf(openings);
    photographs = List.copyOf(photographs);
  }

  /**
   * Works out a movement photograph by photograph.
   *
   * @param name permanent name
   * @param first the opening it is measured by
   * @param openings names of all openings whose reveals show it
   * @param moved how many moved photographs, 1 or more
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
    List<MovedPhotograph> photographs =
        new MovementMeasures(measure, first.heldBy(), hand).photographs(name, slow, evenIn, moved);
    return new Movement(name, first.model(), openings, measure, slow, evenIn, photographs);
  }

  /** How high its free edge comes above the table in millimeters, 0 where it stays on it. */
  public double highest() {
    return photographs.stream()
        .flatMap(photograph -> photograph.measures().height().stream())
        .mapToDouble(BigDecimal::doubleValue)
        .max()
        .orElse(0);
  }

  /** Its moved photographs: all but photograph 0. */
  public List<MovedPhotograph> moved() {
    return photographs.subList(1, photographs.size());
  }

  /**
   * One photograph of it.
   *
   * @param photograph which
   * @param progress share of the movement done, 0 to 1
   * @param measures what the hand sets for it
   */
  public record MovedPhotograph(
      Photograph photograph, double progress, PhotographMeasures measures) {

    /** Whether the hand has nothing to move, so that it looks like the photograph before. */
    public boolean isLikeBefore() {
      return photograph.number() > 0 && measures.step().signum() == 0;
    }
  }
}
