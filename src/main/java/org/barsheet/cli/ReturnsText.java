package org.barsheet.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.cues.PlainMotif;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.find.NearMiss;
import org.barsheet.production.places.Returns;
import org.barsheet.score.BarBeat;

/** The returns of motifs as a table and, for people, a word on each motif. */
final class ReturnsText {

  /** What there is to say where a plan asks for no motif. */
  static final String NO_MOTIF =
      "the plan names no motifs; add one under motifs (about suggests some)";

  private final Returns returns;

  private ReturnsText(Returns returns) {
    this.returns = returns;
  }

  static void print(Returns returns, As as, PrintWriter out) {
    ReturnsText text = new ReturnsText(returns);
    if (as != As.TEXT) {
      text.forPrograms().print(as, out);
      return;
    }
    if (!returns.occurrences().isEmpty()) {
      text.forPeople().print(as, out);
      out.println();
    }
    if (returns.plan().motifs().isEmpty()) {
      out.println(NO_MOTIF);
    }
    returns.search().motifs().forEach(motif -> out.println(text.summary(motif)));
    returns.search().tooPlain().forEach(plain -> out.println(notLookedFor(plain)));
    out.flush();
  }

  private static String notLookedFor(PlainMotif plain) {
    return plain.subject()
        + " isn't looked for: "
        + plain.why().sentence()
        + "; "
        + plain.why().remedy();
  }

  private Table forPeople() {
    Table table = new Table("motif", "place", "seconds", "certainty", "form");
    for (Occurrence found : returns.occurrences()) {
      table.add(
          found.motif() + (found.number() == 0 ? "" : " " + found.number()),
          place(found.notes().meantStart()).toString(),
          returns.music().tempo().secondsAt(found.startTick()).toDecimal(3),
          certainty(found) + (found.certainty() == Certainty.CERTAIN ? "" : " ?"),
          found.variation().description());
    }
    return table;
  }

  /** "glimmer: 13 certain, 2 likely; distinct: hardly a chance find to be expected". */
  private String summary(Motif motif) {
    String counts =
        returns.occurrences().stream()
            .filter(found -> found.motif().equals(motif.name()))
            .collect(
                Collectors.groupingBy(ReturnsText::certainty, TreeMap::new, Collectors.counting()))
            .entrySet()
            .stream()
            .map(count -> count.getValue() + " " + count.getKey())
            .collect(Collectors.joining(", "));
    String found = returns.counted(motif.name()).isEmpty() ? never(motif, counts) : counts;
    return motif.name() + ": " + found + "; " + returns.search().reliability(motif).sentence();
  }

  private String never(Motif motif, String counts) {
    Optional<NearMiss> nearest = returns.search().nearest(motif, 0, Long.MAX_VALUE);
    String miss =
        nearest
            .map(near -> "nearest in " + place(near.startTick()) + ", " + near.sentence())
            .orElse("nothing like it anywhere");
    return "never found, " + miss + (counts.isEmpty() ? "" : "; " + counts);
  }

  private Table forPrograms() {
    Table table =
        new Table(
            "motif",
            "return",
            "bar",
            "beat",
            "quarter",
            "seconds",
            "end_quarter",
            "end_seconds",
            "part",
            "form",
            "transposition",
            "score",
            "certainty");
    for (Occurrence found : returns.occurrences()) {
      BarBeat place = place(found.notes().meantStart());
      table.add(
          found.motif(),
          found.number(),
          place.bar(),
          Figures.decimal(place.beat(), 6),
          quarter(found.startTick()),
          returns.music().tempo().secondsAt(found.startTick()).toDecimal(6),
          quarter(found.notes().endTick()),
          returns.music().tempo().secondsAt(found.notes().endTick()).toDecimal(6),
          parts(found),
          found.variation().description(),
          found.variation().transposition(),
          Figures.decimal(BigFraction.from(found.score(), 1e-9, 100), 4),
          certainty(found));
    }
    return table;
  }

  private BarBeat place(long tick) {
    return returns.music().bars().locate(tick);
  }

  private Number quarter(long tick) {
    return Figures.decimal(BigFraction.of(tick, returns.music().score().ticksPerQuarter()), 6);
  }

  private String parts(Occurrence found) {
    return found.parts().stream()
        .map(part -> returns.music().score().parts().get(part).name())
        .collect(Collectors.joining("; "));
  }

  private static String certainty(Occurrence found) {
    return found.certainty().name().toLowerCase(Locale.ROOT);
  }
}
