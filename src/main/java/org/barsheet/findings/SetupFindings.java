package org.barsheet.findings;

import java.util.List;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;

/** What cannot be photographed as the setups stand. */
public final class SetupFindings {

  private SetupFindings() {}

  /** Flaps and pieces that would stand in the lens. */
  public static List<Finding> of(ShootingPlan shooting) {
    Findings findings = new Findings();
    for (Setup setup : shooting.setups()) {
      setup
          .view()
          .ifPresent(
              view ->
                  view.distanceMillimeters()
                      .ifPresent(
                          distance -> setup.runs().forEach(run -> add(findings, run, distance))));
    }
    return findings.worstFirst();
  }

  private static void add(Findings findings, Setup.Run run, double distance) {
    double highest = run.movement().highest();
    if (highest >= distance) {
      findings.add(
          Severity.WARNING,
          Concerns.ANIMATOR,
          "",
          run.movement().name()
              + " comes up "
              + Math.round(highest)
              + " mm, and the lens is about "
              + Math.round(distance)
              + " mm away",
          "use a longer lens, a wider field or a smaller model");
    }
  }
}
