package org.barsheet.frames;

import java.util.List;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmBeat;
import org.barsheet.cues.MusicRuler;
import org.barsheet.film.FilmSheet;
import org.barsheet.score.BarBeat;
import org.barsheet.timing.Shot;

/** What is said beside each frame. */
final class Strips {

  private final FilmSheet sheet;
  private final MusicRuler ruler;

  Strips(FilmSheet sheet) {
    this.sheet = sheet;
    this.ruler = new MusicRuler(sheet.timing().music(), sheet.timing().clock());
  }

  Strip at(Shot shot, long frame) {
    return new Strip(
        sheet.plan().film().timecode(frame).toString(),
        frame,
        shot.panel().name(),
        frame - shot.frames().start() + 1,
        place(frame),
        landings(shot, frame));
  }

  /** The felt beat that sounds on a frame. */
  String place(long frame) {
    List<FilmBar> bars = sheet.timing().bars();
    if (bars.isEmpty() || frame < bars.get(0).startFrame()) {
      return "before the music";
    }
    FilmBar last = bars.get(bars.size() - 1);
    if (frame >= last.startFrame() + last.lengthFrames()) {
      return "after the music";
    }
    return ruler
        .latestBeatAtOrBefore(frame)
        .map(FilmBeat::place)
        .map(Strips::words)
        .orElse("before the music");
  }

  /** {@code bar 12 beat 3}, {@code bar 12 time 2 beat 3}. */
  private static String words(BarBeat place) {
    String again = place.time() > 1 ? " time " + place.time() : "";
    return "bar " + place.bar() + again + " beat " + place.beat().intValue();
  }

  private List<String> landings(Shot shot, long frame) {
    return sheet.revealsOf(shot).stream()
        .filter(reveal -> reveal.landsFrame() == frame)
        .map(reveal -> reveal.opening().name() + " " + reveal.landing())
        .toList();
  }
}
