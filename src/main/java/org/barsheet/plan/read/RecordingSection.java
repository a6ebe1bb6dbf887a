package org.barsheet.plan.read;

import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Film;
import org.barsheet.plan.Recording;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Texts;

/** Reads which recording of the music there is, and when it begins. */
final class RecordingSection {

  private static final String FILE = "recording";
  private static final String STARTS = "recording-starts";

  private RecordingSection() {}

  static Optional<Recording> read(
      PlanSection music, FilmSection section, Film film, PlanReading reading) {
    Optional<Seconds> starts =
        music.read(STARTS, text -> section.sinceFirstFrame(text, film)).flatMap(time -> time);
    if (!music.has(FILE) && music.has(STARTS)) {
      music.problem(
          STARTS,
          "'" + STARTS + "' says when a recording begins, but no recording is named",
          "name the sound file too: recording: mix.wav");
    }
    return music
        .read(FILE, Texts::file)
        .map(file -> new Recording(reading.resolve(file), starts, music.where(FILE)));
  }
}
