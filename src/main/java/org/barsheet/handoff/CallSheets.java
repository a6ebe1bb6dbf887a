package org.barsheet.handoff;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.barsheet.calls.Call;
import org.barsheet.exposure.FileNames;
import org.barsheet.film.FilmSheet;

/** A page for each performer: when they are seen, how to film themselves, what to send. */
final class CallSheets {

  private CallSheets() {}

  /** One page a performer, in {@code calls/}. */
  static List<HandoffFile> files(FilmSheet sheet) {
    return sheet.calls().stream().map(call -> file(sheet, call)).toList();
  }

  private static HandoffFile file(FilmSheet sheet, Call call) {
    return new HandoffFile(
        "calls/" + FileNames.safe(call.performer().name()) + ".html",
        out -> out.write(CallPage.of(sheet, call).getBytes(StandardCharsets.UTF_8)));
  }
}
