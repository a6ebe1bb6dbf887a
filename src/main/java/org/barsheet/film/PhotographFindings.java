package org.barsheet.film;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.barsheet.photographs.SequenceReport;
import org.barsheet.photographs.TakenPhotographs;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** What the animator is told about the photographs that are there. */
final class PhotographFindings {

  private PhotographFindings() {}

  static List<Finding> of(TakenPhotographs taken) {
    List<Finding> findings = new ArrayList<>();
    for (SequenceReport report : taken.reports()) {
      for (SequenceReport.Wrong wrong : report.faults()) {
        findings.add(
            new Finding(
                Severity.WARNING,
                Concerns.ANIMATOR,
                "",
                "photographs of " + report.sequence(),
                OptionalLong.empty(),
                wrong.sentence(),
                wrong.remedy()));
      }
    }
    return findings;
  }
}
