package org.barsheet.handoff;

import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;

/** Every shot as a WebVTT chapter; chapters follow each other without gap or overlap. */
final class ChaptersVtt {

  private ChaptersVtt() {}

  static byte[] bytes(FilmSheet sheet) {
    WebVtt vtt = new WebVtt(sheet.timing().clock().rate());
    vtt.note("Chapters are shots; " + FilmWords.counting(sheet.plan().film()));
    for (Shot shot : sheet.timing().shots()) {
      String action = shot.panel().action();
      vtt.cue(
          "panel-" + shot.panel().name(),
          shot.frames(),
          "Panel " + shot.panel().name() + (action.isEmpty() ? "" : ": " + action));
    }
    return vtt.bytes();
  }
}
