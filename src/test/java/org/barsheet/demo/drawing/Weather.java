package org.barsheet.demo.drawing;

import static org.barsheet.demo.drawing.Shapes.box;
import static org.barsheet.demo.drawing.Shapes.cloud;
import static org.barsheet.demo.drawing.Shapes.disc;
import static org.barsheet.demo.drawing.Shapes.polygon;
import static org.barsheet.demo.drawing.Shapes.waves;

/** The sky, the headland far off, fog and wind. */
final class Weather {

  private static final double[][] STARS = {
    {2.1, 1.1},
    {4.9, 2.2},
    {7.2, 0.8},
    {10.6, 1.7},
    {14.2, 0.9},
    {16.4, 2.6},
    {22.9, 1.2},
    {23.3, 4.6},
    {0.7, 3.1},
    {18.6, 5.4}
  };

  private final Paper paper;
  private final Scene scene;

  Weather(Paper paper, Scene scene) {
    this.paper = paper;
    this.scene = scene;
  }

  void sky() {
    Light light = scene.light();
    paper.bare(box(-1, -1, 26, 16), light.highSky);
    boolean stormy = light == Light.STORM;
    boolean starry = light == Light.NIGHT || light == Light.BRIGHT;
    if (starry) {
      for (double[] star : STARS) {
        star(star[0], star[1]);
      }
    }
    if (light != Light.FOG && !stormy) {
      paper.shining(disc(18.4, 2.1, 0.95), Ink.PAPER);
      paper.bare(disc(18.1, 1.85, 0.2), 0xDDD5C3);
      paper.bare(disc(18.75, 2.4, 0.28), 0xDDD5C3);
    }
    paper.shining(waves(-1, 25, 4.6, 15, 6.5, 1.5, 0.9), light.middleSky);
    paper.shining(waves(-1, 25, 7.2, 15, 8.5, 4.0, 1.0), light.lowSky);
    paper.cut(
        polygon(15, 12.5, 16.2, 10.4, 18.2, 9.8, 20, 10.2, 22, 9.5, 25, 10.4, 25, 12.5),
        Ink.DEEP_TEAL);
  }

  private void star(double x, double y) {
    double arm = 0.16;
    double waist = 0.045;
    paper.bare(
        polygon(
            x, y - arm, x + waist, y - waist, x + arm, y, x + waist, y + waist, x, y + arm,
            x - waist, y + waist, x - arm, y, x - waist, y - waist),
        Ink.PALE_AMBER);
  }

  void fog() {
    double thickness = scene.fog();
    if (thickness <= 0) {
      return;
    }
    for (int strip = 0; strip < 6; strip++) {
      double top = 3.4 + strip * 1.55;
      double left = -3 + (strip * 37 % 11) * 0.9;
      double strength = Math.min(0.92, thickness * (0.45 + 0.1 * strip));
      paper.sheer(cloud(left, top, 17, 1.25), 0xEDEBE2, strength);
      paper.sheer(cloud(left + 12.5, top + 0.75, 14, 1.0), 0xE4E4DC, strength * 0.85);
      paper.sheer(cloud(left - 13, top + 0.6, 11, 1.1), 0xE4E4DC, strength * 0.85);
    }
  }

  void gulls(double... placesAndSpans) {
    for (int i = 0; i < placesAndSpans.length; i += 3) {
      gull(placesAndSpans[i], placesAndSpans[i + 1], placesAndSpans[i + 2]);
    }
  }

  private void gull(double x, double y, double span) {
    paper.shining(Shapes.gull(x, y, span), Ink.PAPER);
    paper.bare(
        polygon(
            x + span * 0.4,
            y + span * 0.04,
            x + span * 0.56,
            y + span * 0.1,
            x + span * 0.4,
            y + span * 0.12),
        Ink.AMBER);
    paper.shining(cloud(x - span * 0.4, y, span * 0.7, span * 0.17), Ink.PAPER);
    paper.shining(disc(x + span * 0.33, y + span * 0.06, span * 0.11), Ink.PAPER);
    paper.bare(disc(x + span * 0.36, y + span * 0.04, span * 0.022), Ink.SHADE);
  }

  /** Slips of paper that the wind carries off. */
  void wind() {
    for (int slip = 0; slip < 9; slip++) {
      double x = 5.2 + (slip * 29 % 17) * 0.48;
      double y = 3.9 + (slip * 13 % 9) * 0.42;
      paper.cut(Shapes.slip(x, y, 1.5 + 0.2 * (slip % 3)), Ink.PALE_TEAL);
    }
  }
}
