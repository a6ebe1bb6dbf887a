package org.barsheet.artwork;

import java.util.Optional;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;

/**
 * The part of a clip's picture that is seen in an opening: the largest rectangle of the opening's
 * shape, in the middle.
 *
 * @param left in pixels of the clip, from its left edge
 * @param top in pixels of the clip, from its top edge
 * @param wide in pixels of the clip
 * @param high in pixels of the clip
 */
public record ClipCrop(double left, double top, double wide, double high) {

  /** The crop of a performer's clip, where the size of its picture is known. */
  public static Optional<ClipCrop> of(Performer performer, Rect opening) {
    return performer.clipWidth() > 0 && performer.clipHeight() > 0
        ? Optional.of(of(performer.clipWidth(), performer.clipHeight(), opening))
        : Optional.empty();
  }

  /** The crop of a picture {@code clipWidth} by {@code clipHeight} pixels large. */
  public static ClipCrop of(int clipWidth, int clipHeight, Rect opening) {
    double scale = Math.min(clipWidth / opening.wide(), clipHeight / opening.high());
    double wide = scale * opening.wide();
    double high = scale * opening.high();
    return new ClipCrop((clipWidth - wide) / 2, (clipHeight - high) / 2, wide, high);
  }

  /**
   * How large the clip is shown where its crop fills a rectangle of the film's picture: 1 as is.
   */
  public double scaleIn(PictureRect rect) {
    return rect.wide() / wide;
  }
}
