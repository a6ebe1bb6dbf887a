package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.Handoff;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.handoff.Overlays;
import org.barsheet.handoff.Placeholders;
import org.barsheet.production.publish.KeptName;
import org.barsheet.production.publish.OutputFolder;
import org.barsheet.review.ReviewPage;
import org.barsheet.workbook.WorkbookWriter;
import org.barsheet.workbook.typed.CarriedOver;

/** Prints a film into a folder. */
final class Making {

  private final FilmSheet film;
  private final String name;
  private final KeptPlaces places;
  private final OutputFolder out;
  private final Progress progress;

  /**
   * A film to print.
   *
   * @param name the plan's file name without extension, first part of the files' names
   */
  Making(FilmSheet film, String name, KeptPlaces places, OutputFolder out, Progress progress) {
    this.film = film;
    this.name = name;
    this.places = places;
    this.out = out;
    this.progress = progress;
  }

  /** Writes and publishes everything. */
  Made make(Sounds sounds, Movies movies, Extras extras) {
    Path book = out.folder().resolve(name + ".xlsx");
    try (MeanwhileWorkbook workbook = MeanwhileWorkbook.of(film, book)) {
      List<HandoffFile> sheets = sheets(sounds, extras, workbook);
      List<HandoffFile> placeholders = extras.placeholders() ? Placeholders.files(film) : List.of();
      ReadFiles.of(film.plan(), extras)
          .refuseToReplace(
              out.folder(),
              Stream.concat(
                  Stream.of(sheets, placeholders).flatMap(List::stream).map(HandoffFile::path),
                  movies.paths().stream()));
      sheets.forEach(this::write);
      Placed placed = Placed.NONE;
      if (extras.placeholders()) {
        progress.step("drawing placeholders");
        placed = Placed.into(out, placeholders);
      }
      List<String> notes = new ArrayList<>(sounds.notes());
      notes.addAll(extras.overlays() ? Overlays.notes(film) : List.of());
      notes.addAll(movies.write(sounds.bank()));
      Optional<KeptWorkbook> kept = keep(book, workbook.carried());
      List<Path> published = new ArrayList<>(out.publish());
      kept.ifPresent(earlier -> published.remove(earlier.file()));
      return new Made(published, kept, placed.published(published), notes, film);
    }
  }

  /** The workbook last: it takes as long as all the others. */
  private List<HandoffFile> sheets(Sounds sounds, Extras extras, MeanwhileWorkbook workbook) {
    List<HandoffFile> files = new ArrayList<>();
    files.add(
        new HandoffFile(
            name + ".html", stream -> ReviewPage.write(film, name, out.folder(), stream)));
    files.addAll(Handoff.documents(film, name));
    files.addAll(extras.paper() ? Handoff.paper(film, name) : List.of());
    files.addAll(extras.overlays() ? Overlays.files(film) : List.of());
    files.addAll(sounds.files());
    places.file().ifPresent(files::add);
    files.add(new HandoffFile(name + ".xlsx", workbook::writeTo));
    return files;
  }

  private void write(HandoffFile file) {
    progress.step("writing " + file.path());
    out.write(file.path(), file.content());
  }

  /** Keeps the workbook before where people changed it, or typed what has no row any more. */
  private Optional<KeptWorkbook> keep(Path book, CarriedOver carried) {
    if (!Files.isRegularFile(book) || (carried.everything() && WorkbookWriter.isUntouched(book))) {
      return Optional.empty();
    }
    Path kept = KeptName.beside(book);
    out.write(String.valueOf(kept.getFileName()), stream -> Files.copy(book, stream));
    return Optional.of(new KeptWorkbook(kept, carried));
  }
}
