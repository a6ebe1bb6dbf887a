package org.barsheet.movie;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.barsheet.artwork.PhotographCrop;
import org.barsheet.frames.OpeningShape;
import org.barsheet.frames.SeenOpening;

/** Lays photographs into the frame: of each the part that fills it. */
final class Photographed {

  /** Light and shadow about a moving piece belong to it, in shares of its size. */
  private static final double ABOUT = 0.1;

  private Photographed() {}

  /** Fills the image. */
  static void fill(Graphics2D pen, Sizes sizes, BufferedImage photograph, PhotographCrop part) {
    Rectangle2D shaped = shaped(photograph, (double) sizes.height() / sizes.width());
    double across = sizes.width() / (part.width() * shaped.getWidth());
    double down = sizes.height() / (part.height() * shaped.getHeight());
    AffineTransform onto = AffineTransform.getScaleInstance(across, down);
    onto.translate(
        -shaped.getX() - part.left() * shaped.getWidth(),
        -shaped.getY() - part.top() * shaped.getHeight());
    pen.drawImage(photograph, onto, null);
  }

  /** A photograph of another shape is first cut to the frame's about its middle. */
  private static Rectangle2D shaped(BufferedImage photograph, double highPerWide) {
    double width = Math.min(photograph.getWidth(), photograph.getHeight() / highPerWide);
    double height = width * highPerWide;
    return new Rectangle2D.Double(
        (photograph.getWidth() - width) / 2, (photograph.getHeight() - height) / 2, width, height);
  }

  /**
   * Lays the photograph of a reveal over what is there: the first one fills the frame, others only
   * show what moves in them.
   */
  static void lay(
      Graphics2D pen,
      Sizes sizes,
      View view,
      BufferedImage photograph,
      SeenOpening opening,
      boolean overAnother) {
    Graphics2D own = (Graphics2D) pen.create();
    if (overAnother) {
      own.clip(reach(opening.shape()));
    }
    own.transform(inverse(view));
    fill(own, sizes, photograph, opening.shown().orElseThrow().part().orElseThrow());
    own.dispose();
  }

  /** From squares back to pixels of the image. */
  private static AffineTransform inverse(View view) {
    AffineTransform back = AffineTransform.getScaleInstance(1 / view.scale(), 1 / view.scale());
    back.translate(-view.left(), -view.top());
    return back;
  }

  /** All that an opening's piece covers on its way. */
  private static Rectangle2D reach(OpeningShape shape) {
    Rectangle2D reach = Shapes.of(shape.opening().rect());
    for (double share = 0; share <= 1; share += 0.125) {
      reach =
          reach.createUnion(Shapes.of(shape.coverAt(share * shape.full()).outline()).getBounds2D());
    }
    double across = ABOUT * reach.getWidth();
    double down = ABOUT * reach.getHeight();
    return new Rectangle2D.Double(
        reach.getX() - across,
        reach.getY() - down,
        reach.getWidth() + 2 * across,
        reach.getHeight() + 2 * down);
  }
}
