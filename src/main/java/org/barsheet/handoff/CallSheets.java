package org.barsheet.handoff;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.plan.Performer;

/** A page for each performer: when they are seen, how to film themselves, what to send. */
final class CallSheets {

  private CallSheets() {}

  /** One page a performer, in {@code calls/}. */
  static List<HandoffFile> files(FilmSheet sheet, String name) {
    return sheet.timing().plan().performers().stream()
        .map(performer -> file(sheet, name, performer))
        .toList();
  }

  private static HandoffFile file(FilmSheet sheet, String name, Performer performer) {
    List<Appearance> seen =
        sheet.appearances().stream()
            .filter(appearance -> appearance.performer().name().equals(performer.name()))
            .toList();
    return new HandoffFile(
        "calls/" + FileNames.safe(performer.name()) + ".html",
        out -> {
          String page = new CallSheet(sheet, name, performer, seen).page();
          out.write(page.getBytes(StandardCharsets.UTF_8));
        });
  }
}
