package org.barsheet.demo.drawing;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;

/** Lays cut paper on the drawing, each piece with the shadow it casts; measured in squares. */
final class Paper {

  private static final double[] SHADOWS = {0.035, 0.065, 0.095};
  private static final float SHADOW_STRENGTH = 0.13f;

  private final Graphics2D graphics;
  private final Light light;

  Paper(Graphics2D graphics, Light light) {
    this.graphics = graphics;
    this.light = light;
  }

  /** A piece of colored paper, a little above what lies below it. */
  void cut(Shape shape, int ink) {
    lay(shape, light.on(ink));
  }

  /** A piece that shines by itself, whatever the hour. */
  void shining(Shape shape, int ink) {
    lay(shape, new Color(ink));
  }

  /** A piece glued flat: no shadow. */
  void flat(Shape shape, int ink) {
    graphics.setColor(light.on(ink));
    graphics.fill(shape);
  }

  /** A piece glued flat in exactly this color. */
  void bare(Shape shape, int ink) {
    graphics.setColor(new Color(ink));
    graphics.fill(shape);
  }

  /** Tracing paper: what lies below shines through. */
  void sheer(Shape shape, int ink, double strength) {
    graphics.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) strength));
    graphics.setColor(new Color(ink));
    graphics.fill(shape);
    graphics.setComposite(AlphaComposite.SrcOver);
  }

  /** A thread along an outline. */
  void thread(Shape path, int ink, double thickness) {
    graphics.setStroke(
        new BasicStroke((float) thickness, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    graphics.setColor(light.on(ink));
    graphics.draw(path);
  }

  private void lay(Shape shape, Color color) {
    for (double offset : SHADOWS) {
      Shape shadow =
          AffineTransform.getTranslateInstance(offset * 0.7, offset).createTransformedShape(shape);
      sheer(shadow, 0x05080F, SHADOW_STRENGTH);
    }
    graphics.setColor(color);
    graphics.fill(shape);
    graphics.setStroke(new BasicStroke(0.022f));
    graphics.setColor(Light.mix(color, Color.WHITE, 0.22));
    graphics.draw(shape);
  }
}
