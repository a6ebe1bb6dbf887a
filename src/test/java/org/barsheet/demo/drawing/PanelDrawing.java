package org.barsheet.demo.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * One panel: what the camera sees of a scene.
 *
 * @param view where the camera looks, in squares; its height follows from the drawing's shape
 * @param scene how things stand
 * @param gulls x, y and half the wing span of each gull, in squares
 * @param extras what only this panel has
 */
record PanelDrawing(View view, Scene scene, List<double[]> gulls, List<Extra> extras) {

  static final int WIDTH = 640;
  static final int HEIGHT = 360;

  PanelDrawing {
    gulls = List.copyOf(gulls);
    extras = List.copyOf(extras);
  }

  /** Where the camera looks, in squares. */
  record View(double left, double top, double width) {}

  /** What only some panels have. */
  enum Extra {
    HORN_RINGS,
    WIND
  }

  /** The panel as a drawing of 640 × 360 pixels. */
  BufferedImage drawing() {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    double pixelsPerSquare = WIDTH / view.width();
    graphics.scale(pixelsPerSquare, pixelsPerSquare);
    graphics.translate(-view.left(), -view.top());
    draw(new Paper(graphics, scene.light()));
    graphics.dispose();
    return inFewColors(image);
  }

  /** Keeps six bits of each color: paper is flat anyway, and the files stay small. */
  private static BufferedImage inFewColors(BufferedImage image) {
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int few = image.getRGB(x, y) & 0xFCFCFC;
        image.setRGB(x, y, few | ((few >> 6) & 0x030303));
      }
    }
    return image;
  }

  private void draw(Paper paper) {
    Openings openings = new Openings(paper, scene);
    Harbour harbour = new Harbour(paper, scene, openings);
    Weather weather = new Weather(paper, scene);
    weather.sky();
    harbour.lighthouse();
    new Houses(paper, openings).draw();
    harbour.quay();
    if (scene.lamplighter() >= 0) {
      new Lamplighter(paper).draw(scene.lamplighter(), scene.pose());
    }
    harbour.sea();
    if (extras.contains(Extra.HORN_RINGS)) {
      harbour.hornRings(scene.ferry());
    }
    if (extras.contains(Extra.WIND)) {
      weather.wind();
    }
    gulls.forEach(weather::gulls);
    weather.fog();
  }
}
