package org.barsheet.plan.read;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Film;
import org.barsheet.plan.SentClip;
import org.barsheet.plan.SentClips;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Texts;

/** Reads where the performers' recordings are: a folder's name, or a table. */
final class ClipSection {

  private static final String KEY = "clips";

  private final PlanReading reading;
  private final FilmSection filmSection;
  private final Film film;
  private final Known known;

  ClipSection(PlanReading reading, FilmSection filmSection, Film film, Known known) {
    this.reading = reading;
    this.filmSection = filmSection;
    this.film = film;
    this.known = known;
  }

  SentClips read(PlanSection plan) {
    Optional<Entry> clips = plan.entry(KEY);
    if (clips.isPresent() && clips.get() instanceof Entry.Keyed) {
      return new SentClips(Optional.empty(), table(plan));
    }
    if (clips.isPresent() && clips.get() instanceof Entry.Items) {
      plan.problem(
          KEY,
          "'clips' takes a folder, or a table of who sent what",
          "write clips: FOLDER, or below it cello: {file: cello.mov}");
      return SentClips.NONE;
    }
    return plan.read(KEY, Texts::file)
        .map(folder -> SentClips.in(reading.file().resolveSibling(folder)))
        .orElse(SentClips.NONE);
  }

  private List<SentClip> table(PlanSection plan) {
    return plan.named(KEY, "clip", PlanKeys.CLIP).stream().map(this::clip).toList();
  }

  private Optional<Seconds> fromMusicStart(String text) {
    Seconds musicStart = film.rate().startOf(film.musicStartFrame());
    return filmSection.sinceFirstFrame(text, film).map(start -> start.minus(musicStart));
  }

  private SentClip clip(PlanSection.Named named) {
    String performer = named.name().strip();
    known.checkPerformer(performer, named.where(), reading.problems());
    PlanSection section = named.section();
    Path file =
        section.need("file", Path.of(""), "name the file that came: file: cello.mov", Texts::file);
    return new SentClip(
        performer,
        reading.resolve(file),
        section.read("rate", FrameRate::parse),
        section.read("start", this::fromMusicStart).flatMap(start -> start),
        section.read("note", "", Texts::plain),
        named.where());
  }
}
