package org.barsheet.cli;

import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.reverseOrder;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.FoldedFindings;

/** Findings as text, grouped by who must act, whoever has the worst first. */
final class FindingsText {

  private FindingsText() {}

  /**
   * What to read first: of which the same can be said in one line, and of remarks only what is so.
   */
  static void printShort(List<Finding> findings, PrintWriter out) {
    List<Finding> folded = FoldedFindings.of(findings);
    print(folded, finding -> finding.severity() != Severity.REMARK, out);
    boolean more = folded.size() < findings.size() || folded.stream().anyMatch(FindingsText::isCut);
    out.println(totals(findings) + (more ? "; --all prints everything" : ""));
    out.flush();
  }

  /** Every finding with its remedy. */
  static void printAll(List<Finding> findings, PrintWriter out) {
    print(findings, finding -> true, out);
    out.println(totals(findings));
    out.flush();
  }

  private static boolean isCut(Finding finding) {
    return finding.severity() == Severity.REMARK && !finding.remedy().isEmpty();
  }

  private static void print(
      List<Finding> findings, Predicate<Finding> withRemedy, PrintWriter out) {
    Map<Concerns, List<Finding>> byPerson =
        findings.stream()
            .collect(groupingBy(Finding::concerns, () -> new EnumMap<>(Concerns.class), toList()));
    byPerson.entrySet().stream()
        .sorted(Comparator.comparing(theirs -> worst(theirs.getValue()), reverseOrder()))
        .forEach(
            theirs -> {
              out.println(theirs.getKey().name().toLowerCase(Locale.ROOT));
              theirs.getValue().forEach(one -> print(one, withRemedy.test(one), out));
              out.println();
            });
  }

  private static Severity worst(List<Finding> findings) {
    return findings.stream().map(Finding::severity).max(naturalOrder()).orElseThrow();
  }

  private static void print(Finding finding, boolean withRemedy, PrintWriter out) {
    out.println("  " + line(finding));
    if (withRemedy && !finding.remedy().isEmpty()) {
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
