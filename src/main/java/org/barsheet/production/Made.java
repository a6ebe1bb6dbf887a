package org.barsheet.production;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.barsheet.film.FilmSheet;

/**
 * What {@link Production#make} did.
 *
 * @param files written, in the order written
 * @param kept where the workbook that stood there was put, if a person had changed it or cells
 *     typed into it have no row any more
 * @param placed placeholders, where they were asked for; they are among the files
 * @param notes what there is to tell of sound, overlays and movie, in sentences
 * @param film what they were printed from
 */
public record Made(
    List<Path> files,
    Optional<KeptWorkbook> kept,
    Placed placed,
    List<String> notes,
    FilmSheet film) {

  public Made {
    files = List.copyOf(files);
    notes = List.copyOf(notes);
  }
}
