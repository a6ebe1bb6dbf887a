package org.barsheet.artwork;

import java.util.Optional;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;

/**
 * The part of a clip's frame that is seen in an opening: the largest rectangle of the opening's
 * shape, in the middle.
 *
 * @param left in pixels of the clip, from its left edge
 * @param top in pixels of the clip, from its top edge
 * @param width in pixels of the clip
 * @param height in pixels of the clip
 */
public record ClipCrop(double left, double top, double width, double height) {

  /** The crop of a performer's clip, where the size of its frame is known. */
  public static Optional<ClipCrop> of(Performer performer, Rect opening) {
    return performer.clipWidth() > 0 && performer.clipHeight() > 0
        ? Optional.of(of(performer.clipWidth(), performer.clipHeight(), opening))
        : Optional.empty();
  }

  /** The crop of a frame {@code clipWidth} by {@code clipHeight} pixels large. */
  public static ClipCrop of(int clipWidth, int clipHeight, Rect opening) {
    double scale = Math.min(clipWidth / opening.width(), clipHeight / opening.height());
    double width = scale * opening.width();
    double height = scale * opening.height();
    return new ClipCrop((clipWidth - width) / 2, (clipHeight - height) / 2, width, height);
  }

  /**
   * How large the clip is shown where its crop fills a rectangle of the film's drawing: 1 as is.
   */
  public double scaleIn(FrameRect rect) {
    return rect.width() / width;
  }
}
