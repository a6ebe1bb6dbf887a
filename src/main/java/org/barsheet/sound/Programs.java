package org.barsheet.sound;

import java.util.OptionalInt;
import org.barsheet.score.GeneralMidi;
import org.barsheet.score.Part;

/** The General MIDI program of a part. */
final class Programs {

  private Programs() {}

  /**
   * By the instrument the file names, else by the part's own name; a piano where neither is one.
   */
  static int of(Part part) {
    OptionalInt named = GeneralMidi.programOf(part.instrument());
    return named.orElse(GeneralMidi.programOf(part.name()).orElse(0));
  }
}
