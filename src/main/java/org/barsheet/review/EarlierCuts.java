package org.barsheet.review;

import java.util.LinkedHashMap;
import java.util.Map;
import org.barsheet.changes.Changes;
import org.barsheet.clock.FrameSpan;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.LaidPanel;
import org.barsheet.timing.PanelChange;
import org.barsheet.timing.Shot;

/** Where an earlier run of the same folder cut. */
final class EarlierCuts {

  private final FilmSheet sheet;
  private final Changes changes;

  EarlierCuts(FilmSheet sheet, Changes changes) {
    this.sheet = sheet;
    this.changes = changes;
  }

  /** All panels of the earlier run, where one of them lies elsewhere now; else nothing. */
  void write(PageJson json) {
    if (changes.panels().isEmpty()) {
      return;
    }
    json.objects(
        "earlier",
        cuts().entrySet(),
        cut ->
            json.text("panel", cut.getKey())
                .text("action", "")
                .number("start", cut.getValue().start())
                .number("end", cut.getValue().endExclusive()));
  }

  private Map<String, FrameSpan> cuts() {
    Map<String, FrameSpan> cuts = new LinkedHashMap<>();
    for (Shot shot : sheet.timing().shots()) {
      cuts.put(shot.panel().name(), shot.frames());
    }
    for (PanelChange change : changes.panels()) {
      cuts.remove(change.panel());
      change.before().map(LaidPanel::frames).ifPresent(was -> cuts.put(change.panel(), was));
    }
    return cuts;
  }
}
