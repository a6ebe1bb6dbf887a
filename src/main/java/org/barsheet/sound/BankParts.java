package org.barsheet.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.score.GeneralMidi;
import org.barsheet.score.Part;
import org.barsheet.sound.SoundBank.Sound;

/**
 * Which sound of a bank every part of a score has.
 *
 * @param sounds one a part, in order; empty where the part stays silent
 * @param lacking what the bank lacks and what is heard instead, in sentences
 */
record BankParts(List<Optional<Sound>> sounds, List<String> lacking) {

  BankParts {
    sounds = List.copyOf(sounds);
    lacking = List.copyOf(lacking);
  }

  static BankParts of(List<Part> parts, SoundBank bank) {
    List<Optional<Sound>> sounds = new ArrayList<>();
    List<String> lacking = new ArrayList<>();
    for (Part part : parts) {
      sounds.add(part.drums() ? drums(part, bank, lacking) : tones(part, bank, lacking));
    }
    return new BankParts(sounds, lacking);
  }

  private static Optional<Sound> drums(Part part, SoundBank bank, List<String> lacking) {
    Optional<Sound> kit = bank.drums();
    if (kit.isEmpty()) {
      lacking.add(bank.name() + " has no drums: " + part.name() + " is silent");
    }
    return kit;
  }

  private static Optional<Sound> tones(Part part, SoundBank bank, List<String> lacking) {
    int program = Programs.of(part);
    Optional<Sound> sound = bank.program(program);
    if (sound.isPresent()) {
      return sound;
    }
    Optional<Sound> instead = bank.instead(program);
    lacking.add(
        bank.name()
            + " has no program "
            + (program + 1)
            + " ("
            + GeneralMidi.instrument(program)
            + "): "
            + part.name()
            + instead.map(other -> " plays with its '" + other.name() + "'").orElse(" is silent"));
    return instead;
  }
}
