package org.barsheet.workbook;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmClock;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.SoundedNotes;
import org.barsheet.motif.Variation;
import org.barsheet.pulse.Music;
import org.barsheet.score.BarBeat;

/** The moments that the sample film's panels sit on. */
final class SampleCues {

  private SampleCues() {}

  static Cue cue(
      Music music, FilmClock clock, SampleFilm.Scene scene, FrameSpan frames, int number) {
    long frame = frames.start() + frames.length() / 4;
    if (frame < clock.musicStartFrame() || scene.reveals().isEmpty()) {
      BarBeat place = place(music, clock, frames.start());
      Seconds at = clock.scoreTime(Math.max(frames.start(), clock.musicStartFrame()));
      return new Cue(
          "bar-" + number,
          Cue.Kind.BAR,
          "",
          0,
          at,
          frames.start(),
          place,
          at,
          frames.start(),
          place,
          Optional.empty());
    }
    long accent = frames.start() + scene.reveals().get(0).landsInShot();
    return occurrence(music, clock, number, Certainty.CERTAIN, accent);
  }

  static Cue occurrence(
      Music music, FilmClock clock, int number, Certainty certainty, long accent) {
    long first = Math.max(clock.musicStartFrame(), accent - 40);
    long startTick = tick(music, clock, first);
    long accentTick = tick(music, clock, accent);
    Occurrence occurrence =
        new Occurrence(
            "glimmer",
            number,
            new SoundedNotes(
                List.of(startTick, accentTick), List.of(79, 91), accentTick, accentTick + 240),
            List.of(0, 1),
            new Variation(List.of(Form.TONAL), 5, "tonal, up a fourth, last note shortened"),
            0.9,
            certainty);
    return new Cue(
        "glimmer-" + number,
        Cue.Kind.RETURN,
        "glimmer",
        number,
        music.tempo().secondsAt(startTick),
        first,
        music.bars().locate(startTick),
        music.tempo().secondsAt(accentTick),
        accent,
        music.bars().locate(accentTick),
        Optional.of(occurrence));
  }

  private static long tick(Music music, FilmClock clock, long frame) {
    return Math.max(0, Math.round(music.tempo().tickAt(clock.scoreTime(frame)).doubleValue()));
  }

  static BarBeat place(Music music, FilmClock clock, long frame) {
    return music.bars().locate(tick(music, clock, frame));
  }
}
