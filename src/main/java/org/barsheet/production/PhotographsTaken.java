package org.barsheet.production;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.photographs.CheckedSequence;
import org.barsheet.photographs.TakenFolder;

/**
 * What became of photographs that came out of a camera.
 *
 * @param sequence which is which, and what is wrong
 * @param found the folder they were in
 * @param to the folder they were copied into
 * @param copied files written there; none where the pairing is not plain and nobody accepted it
 * @param kept files that were there, under the names they are kept by
 * @param evened what was done to each evened copy, in sentences
 */
public record PhotographsTaken(
    CheckedSequence sequence,
    TakenFolder found,
    Path to,
    List<Path> copied,
    List<Path> kept,
    List<String> evened) {

  public PhotographsTaken {
    copied = List.copyOf(copied);
    kept = List.copyOf(kept);
    evened = List.copyOf(evened);
  }
}
