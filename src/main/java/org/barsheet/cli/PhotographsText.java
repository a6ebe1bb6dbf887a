package org.barsheet.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.barsheet.input.Prose;
import org.barsheet.photographs.CheckedPhotograph;
import org.barsheet.photographs.CheckedSequence;
import org.barsheet.photographs.FaultKind;
import org.barsheet.photographs.PhotographFault;
import org.barsheet.production.PhotographsTaken;

/** What is said of photographs that came out of a camera. */
final class PhotographsText {

  private PhotographsText() {}

  static void print(PhotographsTaken taken, PrintWriter out) {
    CheckedSequence sequence = taken.sequence();
    summary(sequence).print(As.TEXT, out);
    out.println();
    out.println(order(taken));
    for (String question : sequence.questions()) {
      out.println("? " + question + ".");
    }
    for (PhotographFault fault : sequence.faults()) {
      out.println("! " + fault.sentence() + ".");
      out.println("  " + fault.remedy());
    }
    for (String sentence : sequence.unmeasured()) {
      out.println("Not measured: " + sentence + ".");
    }
    for (String sentence : sequence.cleanup()) {
      out.println("To paint out, " + sentence + ".");
    }
    List<String> again = sequence.again();
    out.println(
        again.isEmpty() ? "Nothing must be taken again." : "Take again: " + Prose.listed(again));
  }

  private static String order(PhotographsTaken taken) {
    String by = taken.found().byTime() ? "in the order of their times" : "in the order of names";
    String renamed =
        taken.found().isRenamed() ? "; their names count otherwise, check the camera's clock" : "";
    return Figures.count(taken.found().photographs().size(), "photograph")
        + " "
        + by
        + renamed
        + ".";
  }

  private static Table summary(CheckedSequence sequence) {
    Table table =
        new Table("photograph", "file", "open %", "planned %", "moved px", "light stops", "marks");
    for (CheckedPhotograph one : sequence.photographs()) {
      table.add(
          one.planned().name(),
          one.taken().name(),
          percent(one.uncovered()),
          percent(one.plannedUncovered()),
          one.move().isKnown() ? decimal(one.move().shift(), 2) : "",
          one.light().isKnown() ? decimal(one.light().stops(), 2) : "",
          marks(one));
    }
    return table;
  }

  /** Everything that was measured. */
  static Table table(CheckedSequence sequence) {
    Table table =
        new Table(
            "photograph",
            "file",
            "uncovered",
            "planned",
            "right_px",
            "down_px",
            "turned_deg",
            "scale",
            "stops",
            "redder_stops",
            "bluer_stops",
            "detail",
            "clipped",
            "marks");
    for (CheckedPhotograph one : sequence.photographs()) {
      table.add(
          one.planned().name(),
          one.taken().name(),
          share(one.uncovered()),
          share(one.plannedUncovered()),
          decimal(one.move().across(), 3),
          decimal(one.move().down(), 3),
          decimal(one.move().turn(), 4),
          decimal(one.move().scale(), 6),
          decimal(one.light().stops(), 4),
          decimal(one.light().redder(), 4),
          decimal(one.light().bluer(), 4),
          decimal(one.sharpness(), 3),
          decimal(one.clipped(), 4),
          marks(one));
    }
    return table;
  }

  private static String marks(CheckedPhotograph one) {
    return one.marks().stream().map(FaultKind::word).collect(Collectors.joining(" "));
  }

  private static Object percent(OptionalDouble share) {
    return share.isPresent() ? decimal(100 * share.getAsDouble(), 1) : "";
  }

  private static Object share(OptionalDouble share) {
    return share.isPresent() ? decimal(share.getAsDouble(), 5) : "";
  }

  private static BigDecimal decimal(double number, int places) {
    BigDecimal decimal = BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP);
    return decimal.signum() == 0 ? BigDecimal.ZERO.setScale(places) : decimal;
  }
}
