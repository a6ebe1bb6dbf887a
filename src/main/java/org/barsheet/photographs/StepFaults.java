package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds photographs in which the opening does not stand as far open as planned. */
final class StepFaults {

  /** An edge cannot be told finer than this many pixels. */
  private static final double LEAST_PIXELS = 1.5;

  private final HoleGeometry geometry;
  private final String unit;
  private final double tolerance;

  /**
   * With what may be.
   *
   * @param geometry of the hole
   * @param unit of the movement's amounts
   * @param percent of the hole by which its free edge may be off
   */
  StepFaults(HoleGeometry geometry, String unit, double percent) {
    this.geometry = geometry;
    this.unit = unit;
    this.tolerance = Math.max(percent / 100, LEAST_PIXELS / geometry.travel());
  }

  List<PhotographFault> of(List<CheckedPhotograph> photographs) {
    List<PhotographFault> faults = new ArrayList<>();
    CheckedPhotograph before = null;
    for (CheckedPhotograph one : photographs) {
      if (one.uncovered().isPresent() && one.plannedUncovered().isPresent()) {
        double off = one.uncovered().getAsDouble() - one.plannedUncovered().getAsDouble();
        if (Math.abs(off) > tolerance) {
          faults.add(fault(one, before, off));
        }
        before = one;
      }
    }
    return faults;
  }

  private PhotographFault fault(
      CheckedPhotograph one,
      @org.jspecify.annotations.Nullable CheckedPhotograph before,
      double off) {
    double now = one.uncovered().orElse(0);
    double then = before == null ? 0 : before.uncovered().orElse(0);
    double step =
        one.plannedUncovered().orElse(0)
            - (before == null ? 0 : before.plannedUncovered().orElse(0));
    String how;
    if (before != null
        && step > tolerance
        && Math.abs(now - then) < Math.min(tolerance / 2, step / 4)) {
      how = " is like " + before.planned().name() + ": nothing moved between them";
    } else if (before != null && step >= 0 && now < then - tolerance) {
      how = " goes back";
    } else {
      how = off > 0 ? " is open too far" : " is not open far enough";
    }
    String sentence =
        one.planned().name()
            + how
            + String.format(
                Locale.ROOT,
                ": %s, planned %s (edge off by %.1f mm)",
                amount(geometry.amountAt(now)),
                amount(one.planned().amount()),
                Math.abs(off) * geometry.travel() * geometry.millimetersPerPixel());
    return new PhotographFault(
        FaultKind.STEP,
        List.of(one.planned().name()),
        sentence,
        "Take it again at " + amount(one.planned().amount()) + ".");
  }

  private String amount(double amount) {
    String number = String.format(Locale.ROOT, "%.1f", amount);
    return unit.equals("deg") ? number + "°" : number + " " + unit;
  }
}
