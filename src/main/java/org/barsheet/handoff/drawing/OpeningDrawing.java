package org.barsheet.handoff.drawing;

import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;

/** An opening at one step of its movement, seen from above. */
public final class OpeningDrawing {

  private final Canvas canvas;
  private final PixelRect hole;
  private final int line;

  /**
   * @param hole where its hole is
   * @param line thickness of lines in pixels
   */
  public OpeningDrawing(Canvas canvas, PixelRect hole, int line) {
    this.canvas = canvas;
    this.hole = hole;
    this.line = line;
  }

  /**
   * Draws it.
   *
   * @param motion how it opens
   * @param share of the way gone, 0 to 1
   * @param amount the same in the movement's own unit: degrees of a flap
   */
  public void draw(Opening.Motion motion, double share, double amount) {
    canvas.fill(hole, motion instanceof Brightens ? PaperColor.light(share) : PaperColor.INK);
    if (motion instanceof Hinged hinged) {
      flap(hinged.hinge(), StrictMath.cos(StrictMath.toRadians(amount)));
    } else if (motion instanceof Slides slides) {
      shutter(moved(slides.toward(), share));
    } else if (motion instanceof LiftsOff) {
      shutter(moved(Side.TOP, share / 4));
    } else if (motion instanceof Iris) {
      iris(share);
    } else if (!(motion instanceof Brightens)) {
      shutter(hole.part(0, share, 1, 1));
    }
    canvas.outline(hole, line, PaperColor.INK);
  }

  /** A flap on its hinge covers the cosine of its angle; past upright it lies on the other side. */
  private void flap(Side hinge, double cosine) {
    double over = Math.max(0, cosine);
    double beside = Math.min(0, cosine);
    shutter(
        switch (hinge) {
          case LEFT -> hole.part(beside, 0, over, 1);
          case RIGHT -> hole.part(1 - over, 0, 1 - beside, 1);
          case TOP -> hole.part(0, beside, 1, over);
          case BOTTOM -> hole.part(0, 1 - over, 1, 1 - beside);
        });
  }

  private PixelRect moved(Side toward, double share) {
    return switch (toward) {
      case LEFT -> hole.part(-share, 0, 1 - share, 1);
      case RIGHT -> hole.part(share, 0, 1 + share, 1);
      case TOP -> hole.part(0, -share, 1, 1 - share);
      case BOTTOM -> hole.part(0, share, 1, 1 + share);
    };
  }

  private void iris(double share) {
    canvas.fill(hole, PaperColor.LAMP);
    double edge = (1 - share) / 2;
    canvas.fill(hole.part(edge, edge, 1 - edge, 1 - edge), PaperColor.INK);
  }

  private void shutter(PixelRect box) {
    canvas.fill(box, PaperColor.LAMP);
    canvas.outline(box, Math.min(line, Math.min(box.width(), box.height())), PaperColor.INK);
  }
}
