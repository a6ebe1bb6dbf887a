package org.barsheet.follow;

import org.barsheet.score.GeneralMidi;
import org.barsheet.score.Part;

/**
 * How long after its written beginning a note of an instrument rises fastest, as far as that is
 * known before a recording is heard. Measured on renderings by a General MIDI bank.
 *
 * @param seconds the lag
 * @param spread how far recordings and players differ from it, as a standard deviation in seconds
 */
record AttackLag(double seconds, double spread) {

  private static final AttackLag[] FAMILIES = {
    of(5, 4), // piano
    of(6, 5), // celesta and other struck bars and bells
    of(15, 10), // organ
    of(2, 4), // guitar
    of(6, 6), // bass
    of(25, 15), // strings
    of(42, 20), // ensembles and voices
    of(14, 15), // brass
    of(14, 12), // reeds
    of(22, 12), // pipes
    of(10, 10), // synthetic leads
    of(60, 40), // pads
    of(30, 30), // effects
    of(3, 5), // plucked instruments of elsewhere
    of(5, 8), // percussion with pitch
    of(20, 20) // noises
  };

  private static final int FIRST_PLUCKED = 45;
  private static final int LAST_PLUCKED = 47;
  private static final int HORN = 60;

  private static AttackLag of(double milliseconds, double spread) {
    return new AttackLag(milliseconds / 1000, spread / 1000);
  }

  /** The lag of a part by the instrument it names; a piano's where it names none. */
  static AttackLag of(Part part) {
    if (part.drums()) {
      return of(0, 3);
    }
    int program =
        GeneralMidi.programOf(part.instrument())
            .orElse(GeneralMidi.programOf(part.name()).orElse(0));
    if (program >= FIRST_PLUCKED && program <= LAST_PLUCKED) {
      return of(0, 4);
    }
    return program == HORN ? of(40, 20) : FAMILIES[program / 8];
  }
}
