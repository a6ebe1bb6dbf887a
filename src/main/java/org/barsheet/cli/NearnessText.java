package org.barsheet.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.find.NearMiss;
import org.barsheet.production.places.Nearness;
import org.barsheet.production.places.Nearness.OfMotif;
import org.barsheet.score.BarBeat;

/** How near motifs come to a place, as sentences or as a table. */
final class NearnessText {

  private final Nearness near;

  private NearnessText(Nearness near) {
    this.near = near;
  }

  static void print(Nearness near, As as, PrintWriter out) {
    NearnessText text = new NearnessText(near);
    if (as != As.TEXT) {
      text.table().print(as, out);
      return;
    }
    if (near.motifs().isEmpty()) {
      out.println(ReturnsText.NO_MOTIF);
      out.flush();
      return;
    }
    out.println(near.place());
    for (OfMotif motif : near.motifs()) {
      out.println("  " + text.nearest(motif));
      motif.sounding().stream()
          .filter(found -> !motif.counted().equals(Optional.of(found)))
          .forEach(found -> out.println("    " + text.sounding(found)));
    }
    out.flush();
  }

  private String nearest(OfMotif motif) {
    if (motif.nearest().isEmpty()) {
      return motif.motif() + ": nothing like it begins there";
    }
    NearMiss miss = motif.nearest().get();
    String number = motif.counted().map(found -> " " + found.number()).orElse("");
    boolean covered = miss.certainty().isPresent() && number.isEmpty();
    return motif.motif()
        + number
        + ", "
        + place(miss.startTick())
        + ": "
        + miss.sentence()
        + (covered ? "; a better return uses most of its notes" : "");
  }

  private String sounding(Occurrence found) {
    return found.motif()
        + " "
        + found.number()
        + " sounds there, from "
        + place(found.startTick())
        + ": "
        + found.variation().description();
  }

  private Table table() {
    Table table =
        new Table("motif", "bar", "beat", "score", "needed", "certainty", "form", "spoiled");
    for (OfMotif motif : near.motifs()) {
      motif.nearest().ifPresent(miss -> add(table, miss));
    }
    return table;
  }

  private void add(Table table, NearMiss miss) {
    BarBeat place = place(miss.startTick());
    table.add(
        miss.motif(),
        place.bar(),
        Figures.decimal(place.beat(), 6),
        rounded(miss.score()),
        rounded(miss.needed()),
        miss.certainty().map(c -> c.name().toLowerCase(Locale.ROOT)).orElse(""),
        miss.description(),
        miss.spoiled());
  }

  private static Number rounded(double score) {
    return Figures.decimal(BigFraction.from(score, 1e-9, 100), 4);
  }

  private BarBeat place(long tick) {
    return near.music().bars().locate(tick);
  }
}
