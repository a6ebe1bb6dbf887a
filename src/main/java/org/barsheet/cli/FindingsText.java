package org.barsheet.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** Findings as text, grouped by who must act. */
final class FindingsText {

  private FindingsText() {}

  static void print(List<Finding> findings, PrintWriter out) {
    for (Concerns concerns : Concerns.values()) {
      List<Finding> theirs =
          findings.stream().filter(finding -> finding.concerns() == concerns).toList();
      if (!theirs.isEmpty()) {
        out.println(concerns.name().toLowerCase(Locale.ROOT));
        theirs.forEach(finding -> print(finding, out));
        out.println();
      }
    }
    out.println(totals(findings));
    out.flush();
  }

  private static void print(Finding finding, PrintWriter out) {
    out.println("  " + line(finding));
    if (!finding.remedy().isEmpty()) {
      out.println("      " + finding.remedy());
    }
  }

  /** One finding without its remedy: sign, panel, place and sentence. */
  static String line(Finding finding) {
    String panel = finding.panel().isEmpty() ? "" : "panel " + finding.panel();
    boolean saidAnyway =
        finding.sentence().startsWith(finding.place() + " ")
            || finding.sentence().endsWith(" " + finding.place());
    String place = saidAnyway ? "" : finding.place();
    String comma = panel.isEmpty() || place.isEmpty() ? "" : ", ";
    String where = panel + comma + place;
    String colon = where.isEmpty() ? "" : ": ";
    return sign(finding.severity()) + " " + where + colon + finding.sentence();
  }

  /** A sign that says the severity without color. */
  private static String sign(Severity severity) {
    return switch (severity) {
      case ERROR -> "×";
      case WARNING -> "!";
      case REMARK -> "·";
    };
  }

  /** {@code 1 error, 2 warnings, 0 remarks}. */
  static String totals(List<Finding> findings) {
    return Figures.count(number(findings, Severity.ERROR), "error")
        + ", "
        + Figures.count(number(findings, Severity.WARNING), "warning")
        + ", "
        + Figures.count(number(findings, Severity.REMARK), "remark");
  }

  private static long number(List<Finding> findings, Severity severity) {
    return findings.stream().filter(finding -> finding.severity() == severity).count();
  }
}
