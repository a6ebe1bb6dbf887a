package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.barsheet.artwork.ClipCrop;
import org.barsheet.artwork.FrameRect;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.Insert;
import org.barsheet.exposure.Uncovering;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.FilmFrames;
import org.barsheet.plan.Film;

/**
 * Every appearance frame by frame: where its opening lies in the frame, in pixels from the top left
 * corner, over and under which layers it lies, how much of it is uncovered, and which frame of the
 * clip belongs there.
 */
final class InsertsCsv {

  private static final List<String> COLUMNS =
      List.of(
          "frame",
          "timecode",
          "panel",
          "performer",
          "opening",
          "back_to_front",
          "x",
          "y",
          "width",
          "height",
          "share_uncovered",
          "clip",
          "clip_rate",
          "clip_frame",
          "clip_scale",
          "handle_from_clip_frame",
          "handle_until_clip_frame");

  private final FilmSheet sheet;
  private final Film film;
  private final FilmFrames frames;

  private InsertsCsv(FilmSheet sheet) {
    this.sheet = sheet;
    this.frames = FilmFrames.of(sheet, drawing -> false);
    this.film = sheet.plan().film();
  }

  static void write(FilmSheet sheet, OutputStream out) throws IOException {
    InsertsCsv inserts = new InsertsCsv(sheet);
    try (CsvFile table = new CsvFile(out, inserts.film.rate(), COLUMNS)) {
      for (Appearance appearance : sheet.appearances()) {
        Uncovering uncovering = sheet.uncovering(appearance.opening().name());
        for (Insert insert : Insert.of(sheet.timing(), appearance)) {
          table.row(inserts.row(appearance, insert, uncovering.at(insert.frame())));
        }
      }
    }
  }

  private List<?> row(Appearance appearance, Insert insert, double uncovered) {
    FrameRect rect = insert.rect();
    Optional<ClipCrop> crop = ClipCrop.of(appearance.performer(), appearance.opening().rect());
    Optional<FrameSpan> asked = appearance.clipFramesAsked(sheet.timing().clock());
    return List.of(
        insert.frame(),
        film.timecode(insert.frame()).toString(),
        sheet.timing().shots().get(appearance.shot()).panel().name(),
        appearance.performer().name(),
        appearance.opening().name(),
        String.join(FilmWords.OVER, frames.at(insert.frame()).order()),
        FilmWords.pixels(rect.left()),
        FilmWords.pixels(rect.top()),
        FilmWords.pixels(rect.width()),
        FilmWords.pixels(rect.height()),
        FilmWords.decimal(uncovered),
        FileNames.ofClip(appearance.performer()),
        appearance.performer().clipRate().map(FrameRate::exactName).orElse(""),
        insert.clipFrame().isPresent() ? insert.clipFrame().getAsLong() : "",
        crop.<Object>map(c -> FilmWords.decimal(c.scaleIn(rect))).orElse(""),
        asked.<Object>map(FrameSpan::start).orElse(""),
        asked.<Object>map(FrameSpan::endExclusive).orElse(""));
  }
}
