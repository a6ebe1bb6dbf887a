package org.barsheet.plan.read;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Shoot;
import org.barsheet.plan.source.PlanKeys;

/** Reads the camera and the director's rates of work. */
final class ShootSection {

  private static final double HOURS_OF_A_DAY = 24;

  private ShootSection() {}

  static Optional<Camera> camera(PlanSection plan) {
    return plan.section("camera", PlanKeys.CAMERA).map(ShootSection::cameraOf);
  }

  private static Camera cameraOf(PlanSection section) {
    int[] pixels =
        section.need(
            "pixels",
            new int[] {1, 1},
            "write its size: pixels: 6000x4000",
            text -> Measures.pixels(text, "6000x4000"));
    return new Camera(
        section.need("lens", 1.0, "write its focal length: lens: 50 mm", Measures::millimeters),
        section.need("sensor", 1.0, "write the sensor's width: 36 mm", Measures::millimeters),
        pixels[0],
        pixels[1]);
  }

  static Optional<Shoot> shoot(PlanSection plan) {
    return plan.section("shoot", PlanKeys.SHOOT).map(ShootSection::rates);
  }

  private static Shoot rates(PlanSection section) {
    return new Shoot(
        section.need(
            "photographs-per-hour", 1.0, "say how many photographs you take", Measures::positive),
        section.need("minutes-per-setup", 0.0, "say how long you set up", Measures::number),
        section.read("starts", ShootSection::day),
        section.read("hours-per-day", ShootSection::hours));
  }

  /** A date as ISO 8601 writes it. */
  static LocalDate day(String text) {
    try {
      return LocalDate.parse(text.strip());
    } catch (DateTimeParseException noDay) {
      String sentence = "'" + text.strip() + "' is not a date";
      throw new SyntaxException(text, 0, sentence, "write year-month-day: 2026-03-02");
    }
  }

  private static double hours(String text) {
    double hours = Measures.positive(text);
    if (hours > HOURS_OF_A_DAY) {
      throw new SyntaxException(text, 0, "a day has 24 hours", "write hours-per-day: 6");
    }
    return hours;
  }
}
