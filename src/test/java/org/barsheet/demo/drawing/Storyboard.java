package org.barsheet.demo.drawing;

import static org.barsheet.demo.drawing.Flap.BAKERS_LAMP;
import static org.barsheet.demo.drawing.Flap.CHANDLERS_LAMP;
import static org.barsheet.demo.drawing.Flap.CUSTOMS_LAMP;
import static org.barsheet.demo.drawing.Flap.HATCH;
import static org.barsheet.demo.drawing.Flap.HOIST_DOOR;
import static org.barsheet.demo.drawing.Flap.KEEPERS_WINDOW;
import static org.barsheet.demo.drawing.Flap.LANTERN;
import static org.barsheet.demo.drawing.Flap.LOFT_SHUTTER_LEFT;
import static org.barsheet.demo.drawing.Flap.LOFT_SHUTTER_RIGHT;
import static org.barsheet.demo.drawing.Flap.OFFICE_SHUTTER;
import static org.barsheet.demo.drawing.Flap.QUAY_GATE;
import static org.barsheet.demo.drawing.Flap.SAILMAKERS_LAMP;

import java.util.List;
import org.barsheet.demo.drawing.PanelDrawing.Extra;
import org.barsheet.demo.drawing.PanelDrawing.View;
import org.barsheet.demo.drawing.Scene.Instrument;
import org.barsheet.demo.drawing.Scene.Pose;

/** The twenty-six panels of the demo film, in story order; views and openings follow its plan. */
public final class Storyboard {

  private static final View WHOLE = new View(0, 0, 24);

  private static final Scene DUSK = Scene.in(Light.DUSK);
  private static final Scene ONE_LAMP = DUSK.open(1, BAKERS_LAMP);
  private static final Scene TWO_LAMPS = ONE_LAMP.open(1, CHANDLERS_LAMP);
  private static final Scene NIGHT = Scene.in(Light.NIGHT).open(1, BAKERS_LAMP, CHANDLERS_LAMP);
  private static final Scene FOUR_LAMPS = NIGHT.open(1, SAILMAKERS_LAMP, CUSTOMS_LAMP);
  private static final Scene LOFT_OPEN = FOUR_LAMPS.open(1, LOFT_SHUTTER_LEFT, LOFT_SHUTTER_RIGHT);
  private static final Scene SEVEN_LIGHTS = LOFT_OPEN.open(1, HOIST_DOOR);
  private static final Scene OFFICE_OPEN = SEVEN_LIGHTS.open(1, OFFICE_SHUTTER);
  private static final Scene STORM =
      Scene.in(Light.STORM)
          .open(
              1,
              BAKERS_LAMP,
              CHANDLERS_LAMP,
              SAILMAKERS_LAMP,
              CUSTOMS_LAMP,
              LOFT_SHUTTER_LEFT,
              HOIST_DOOR,
              OFFICE_SHUTTER,
              KEEPERS_WINDOW,
              LANTERN)
          .unlitBut();
  private static final Scene ALIGHT = Scene.in(Light.BRIGHT).open(1, Flap.values());

  private Storyboard() {}

  static List<PanelDrawing> panels() {
    return List.of(
        panel(WHOLE, Scene.in(Light.FOG).fog(0.95)),
        gulls(new View(3, 2.8, 16), Scene.in(Light.FOG).fog(0.5), 14.9, 4.6, 0.6),
        gulls(new View(14, 0.6, 10), Scene.in(Light.FOG).fog(0.22), 18.1, 2.7, 1.2, 16.0, 4.4, 0.5),
        panel(
            new View(2.5, 6.2, 7),
            DUSK.open(0.7, BAKERS_LAMP)
                .with(BAKERS_LAMP, Instrument.CELESTA)
                .lamplighter(7.6, Pose.REACHES)),
        panel(new View(2.4, 8.5, 8), ONE_LAMP.lamplighter(9.4, Pose.WALKS)),
        panel(
            new View(0, 5.6, 9),
            ONE_LAMP
                .open(0.7, CHANDLERS_LAMP)
                .with(CHANDLERS_LAMP, Instrument.FLUTE)
                .lamplighter(3.7, Pose.REACHES)),
        gulls(new View(3, 4.2, 12), TWO_LAMPS.lamplighter(8.2, Pose.WALKS), 13.6, 5.6, 0.5),
        panel(
            new View(5.2, 6.6, 7),
            NIGHT
                .open(0.72, SAILMAKERS_LAMP)
                .with(SAILMAKERS_LAMP, Instrument.CELLO)
                .lamplighter(11.2, Pose.REACHES)),
        panel(
            new View(11.4, 6, 8),
            NIGHT
                .open(1, SAILMAKERS_LAMP)
                .open(0.72, CUSTOMS_LAMP)
                .with(CUSTOMS_LAMP, Instrument.VIOLIN)
                .lamplighter(17.5, Pose.REACHES)),
        panel(
            new View(5.8, 3.6, 7),
            FOUR_LAMPS.open(0.9, LOFT_SHUTTER_LEFT).open(0.4, LOFT_SHUTTER_RIGHT)),
        panel(
            new View(6.2, 6.5, 7),
            LOFT_OPEN.open(0.75, HOIST_DOOR).with(HOIST_DOOR, Instrument.CLARINET)),
        gulls(WHOLE, SEVEN_LIGHTS, 16.6, 4.4, 0.5, 15.2, 3.6, 0.35),
        panel(new View(9.4, 2.6, 7), SEVEN_LIGHTS.open(0.5, OFFICE_SHUTTER)),
        panel(new View(8, 4.5, 16), OFFICE_OPEN.lamplighter(16.3, Pose.WALKS)),
        new PanelDrawing(
            new View(8.5, 3.7, 15.3),
            OFFICE_OPEN.ferryAt(18.3).with(OFFICE_SHUTTER, Instrument.HORN),
            List.of(),
            List.of(Extra.HORN_RINGS)),
        gulls(WHOLE, OFFICE_OPEN.ferryAt(16.9).tide(0.25), 19.6, 5.4, 0.5, 22.9, 6.4, 0.4),
        panel(
            new View(18, 5, 6),
            OFFICE_OPEN
                .open(0.72, KEEPERS_WINDOW)
                .with(KEEPERS_WINDOW, Instrument.FLUTE)
                .tide(0.1)),
        panel(new View(16, 0.8, 8), OFFICE_OPEN.open(1, KEEPERS_WINDOW).open(0.65, LANTERN)),
        panel(new View(0, 7.3, 11), OFFICE_OPEN.open(1, KEEPERS_WINDOW, LANTERN).tide(0.35)),
        new PanelDrawing(
            new View(5.8, 3.6, 7),
            STORM.open(0.45, LOFT_SHUTTER_RIGHT),
            List.of(),
            List.of(Extra.WIND)),
        panel(
            new View(2.5, 6.2, 7),
            STORM
                .unlitBut(BAKERS_LAMP)
                .open(0.75, BAKERS_LAMP)
                .with(BAKERS_LAMP, Instrument.CELESTA)
                .lamplighter(7.6, Pose.REACHES)),
        panel(new View(0.2, 9, 8), STORM.open(0.55, HATCH).unlitBut(BAKERS_LAMP, HATCH).tide(0.12)),
        panel(
            new View(7, 4.1, 12),
            ALIGHT
                .open(0.6, QUAY_GATE, LOFT_SHUTTER_RIGHT)
                .lamplighter(16.4, Pose.WALKS)
                .tide(0.2)),
        gulls(
            WHOLE,
            ALIGHT
                .with(CHANDLERS_LAMP, Instrument.FLUTE)
                .with(BAKERS_LAMP, Instrument.CELESTA)
                .with(SAILMAKERS_LAMP, Instrument.CELLO)
                .with(HOIST_DOOR, Instrument.CLARINET)
                .with(OFFICE_SHUTTER, Instrument.HORN)
                .with(CUSTOMS_LAMP, Instrument.VIOLIN)
                .ferryAt(17.9),
            16.4,
            3.4,
            0.45,
            15.3,
            1.9,
            0.35),
        panel(
            new View(6.5, 5.9, 12.2),
            Scene.in(Light.NIGHT)
                .open(1, Flap.values())
                .with(SAILMAKERS_LAMP, Instrument.CELLO)
                .lamplighter(17.0, Pose.SITS)),
        panel(
            WHOLE,
            Scene.in(Light.NIGHT)
                .open(1, Flap.values())
                .fog(0.3)
                .tide(-0.15)
                .lamplighter(17.0, Pose.SITS)));
  }

  private static PanelDrawing panel(View view, Scene scene) {
    return new PanelDrawing(view, scene, List.of(), List.of());
  }

  private static PanelDrawing gulls(View view, Scene scene, double... gulls) {
    return new PanelDrawing(view, scene, List.of(gulls), List.of());
  }
}
