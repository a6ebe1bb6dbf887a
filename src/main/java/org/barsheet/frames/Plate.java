package org.barsheet.frames;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.artwork.PhotographCrop;
import org.barsheet.plan.Rect;

/**
 * What lies at the back of a frame: the photograph of the artwork, or while there is none the
 * drawings that stand for it, one over the other.
 *
 * @param photograph permanent name of the photograph it is cut from
 * @param part the part of the photograph that fills the frame; empty where the panel does not say
 *     what the camera sees
 * @param whole a drawing of the whole artwork
 * @param own the panel's own drawing, and where on the artwork it lies
 * @param nothingDrawn whether the frame has to name its panel, for there is nothing to be seen
 */
public record Plate(
    String photograph,
    Optional<PhotographCrop> part,
    Optional<Path> whole,
    Optional<Placed> own,
    boolean nothingDrawn) {

  /**
   * A drawing on the artwork.
   *
   * @param file of the drawing
   * @param rect in squares of the artwork
   */
  public record Placed(Path file, Rect rect) {}
}
