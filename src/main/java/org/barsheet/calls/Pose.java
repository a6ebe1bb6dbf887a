package org.barsheet.calls;

import java.util.List;
import java.util.OptionalInt;
import org.barsheet.score.GeneralMidi;
import org.barsheet.score.Part;

/** How an instrument lies to the body of whoever plays it. */
public enum Pose {
  /** Nothing is held, or nobody knows what. */
  NOTHING_HELD,
  IN_FRONT,
  ACROSS,
  ON_THE_SHOULDER,
  UPRIGHT,
  TO_THE_SIDE,
  DOWN,
  FORWARD;

  /** Programs of General MIDI, from 0, from which on another pose is meant. */
  private record From(int program, Pose pose) {}

  private static final List<From> POSES =
      List.of(
          new From(0, IN_FRONT),
          new From(24, ACROSS),
          new From(40, ON_THE_SHOULDER),
          new From(42, UPRIGHT),
          new From(44, ON_THE_SHOULDER),
          new From(46, UPRIGHT),
          new From(47, IN_FRONT),
          new From(48, ON_THE_SHOULDER),
          new From(52, NOTHING_HELD),
          new From(56, FORWARD),
          new From(64, DOWN),
          new From(72, TO_THE_SIDE),
          new From(74, DOWN),
          new From(80, IN_FRONT),
          new From(104, ACROSS),
          new From(108, IN_FRONT),
          new From(110, ON_THE_SHOULDER),
          new From(111, DOWN),
          new From(112, IN_FRONT),
          new From(120, NOTHING_HELD));

  /** The pose of a part by its General MIDI instrument, or else its name. */
  static Pose of(Part part) {
    if (part.drums()) {
      return IN_FRONT;
    }
    OptionalInt named = GeneralMidi.programOf(part.instrument());
    OptionalInt program = named.isPresent() ? named : GeneralMidi.programOf(part.name());
    return program.isPresent() ? ofProgram(program.getAsInt()) : NOTHING_HELD;
  }

  private static Pose ofProgram(int program) {
    Pose pose = NOTHING_HELD;
    for (From from : POSES) {
      if (from.program() <= program) {
        pose = from.pose();
      }
    }
    return pose;
  }
}
