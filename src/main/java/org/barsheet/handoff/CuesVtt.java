package org.barsheet.handoff;

import java.util.Comparator;
import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/** Every cue inside the film as a WebVTT cue, as long as it sounds. */
final class CuesVtt {

  private CuesVtt() {}

  static byte[] bytes(FilmSheet sheet) {
    WebVtt vtt = new WebVtt(sheet.timing().clock().rate());
    vtt.note("Times run from the film's first frame; " + FilmWords.counting(sheet.plan().film()));
    CueShots shots = new CueShots(sheet);
    List<Cue> inOrder =
        sheet.timing().cues().stream().sorted(Comparator.comparingLong(Cue::frame)).toList();
    for (Cue cue : inOrder) {
      if (cue.frame() >= 0 && cue.frame() < sheet.timing().lengthFrames()) {
        vtt.cue(cue.id(), frames(sheet, cue), line(sheet, cue, shots.on(cue)));
      }
    }
    return vtt.bytes();
  }

  /** From its first moment to the end of its last note; a mere moment lasts a second. */
  private static FrameSpan frames(FilmSheet sheet, Cue cue) {
    long shortest = cue.frame() + 1;
    long end =
        cue.occurrence()
            .map(
                occurrence ->
                    sheet.timing().music().tempo().secondsAt(occurrence.notes().endTick()))
            .map(sheet.timing().clock()::frameAt)
            .orElse(cue.frame() + sheet.timing().clock().rate().nominal());
    return new FrameSpan(cue.frame(), Math.max(shortest, end));
  }

  private static String line(FilmSheet sheet, Cue cue, List<Shot> shots) {
    StringBuilder line = new StringBuilder(cue.title());
    CueWords.place(cue).ifPresent(place -> line.append(" · ").append(place));
    cue.occurrence()
        .ifPresent(occurrence -> line.append(" · ").append(occurrence.variation().description()));
    if (CueWords.certainty(cue).equals("likely") || CueWords.certainty(cue).equals("possible")) {
      line.append(" (").append(CueWords.certainty(cue)).append(')');
    }
    Film film = sheet.plan().film();
    CueWords.accent(film, cue).ifPresent(accent -> line.append(" · ").append(accent));
    for (Shot shot : shots) {
      line.append(" · panel ").append(shot.panel().name());
      for (PlannedReveal reveal : sheet.revealsOf(shot)) {
        if (reveal.landsFrame() != cue.accentFrame()) {
          line.append(" · ").append(CueWords.landing(film, reveal));
        }
      }
    }
    return line.toString();
  }
}
