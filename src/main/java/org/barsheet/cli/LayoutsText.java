package org.barsheet.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.barsheet.cues.Cue;
import org.barsheet.production.FilmLayouts;
import org.barsheet.timing.FilmLayout;
import org.barsheet.timing.PanelChange;
import org.barsheet.timing.Shot;

/** The best few whole layouts: what each would change, and what it would cost. */
final class LayoutsText {

  private LayoutsText() {}

  static void print(FilmLayouts layouts, int asked, PrintWriter out) {
    List<FilmLayout> all = layouts.layouts();
    for (int i = 0; i < all.size(); i++) {
      out.println(heading(i + 1, all.get(i)));
      all.get(i).sentences().forEach(sentence -> out.println("  " + sentence));
    }
    if (all.size() < asked) {
      out.println(
          all.size() == 1
              ? "There is no alternative: every panel is where it must be."
              : "There are no more alternatives.");
    }
    out.flush();
  }

  private static String heading(int number, FilmLayout layout) {
    if (number == 1) {
      return "best layout, as on the sheets";
    }
    if (layout.isFreeChoice()) {
      return "alternative " + (number - 1) + ": as good, a free choice";
    }
    String why = layout.why().isEmpty() ? "" : ": " + layout.why();
    return "alternative "
        + (number - 1)
        + ": costs "
        + cost(layout).max(new BigDecimal("0.1"))
        + " more"
        + why;
  }

  private static BigDecimal cost(FilmLayout layout) {
    return BigDecimal.valueOf(layout.more()).setScale(1, RoundingMode.HALF_UP);
  }

  /** One row for each panel of each layout. */
  static Table table(FilmLayouts layouts) {
    Table table =
        new Table(
            "layout", "more", "why", "panel", "cue", "bar", "timecode", "frame", "frames", "later");
    for (int i = 0; i < layouts.layouts().size(); i++) {
      FilmLayout layout = layouts.layouts().get(i);
      for (Shot shot : layout.shots()) {
        Cue cue = shot.cue();
        table.add(
            i + 1,
            BigDecimal.valueOf(layout.more()).setScale(3, RoundingMode.HALF_UP),
            layout.why(),
            shot.panel().name(),
            cue.title(),
            cue.place().bar(),
            layouts.film().timecode(shot.frames().start()).toString(),
            shot.frames().start(),
            shot.frames().length(),
            later(layout, shot));
      }
    }
    return table;
  }

  /** Frames a panel begins later than in the best layout. */
  private static long later(FilmLayout layout, Shot shot) {
    return layout.differences().stream()
        .filter(change -> change.panel().equals(shot.panel().name()))
        .mapToLong(PanelChange::beginsLater)
        .findFirst()
        .orElse(0);
  }
}
