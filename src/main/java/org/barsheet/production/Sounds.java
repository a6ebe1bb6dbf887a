package org.barsheet.production;

import java.util.List;
import java.util.Optional;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.Handoff;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.sound.BankGuide;
import org.barsheet.sound.SoundBank;

/**
 * The sound files of a film, where they are asked for.
 *
 * @param files not written yet
 * @param notes what there is to tell of them, in sentences
 * @param bank the guide played with a sound bank, where one was named
 */
record Sounds(List<HandoffFile> files, List<String> notes, Optional<BankGuide> bank) {

  static final Sounds NONE = new Sounds(List.of(), List.of(), Optional.empty());

  Sounds {
    files = List.copyOf(files);
    notes = List.copyOf(notes);
  }

  /** With our own instruments, or with those of a bank. */
  static Sounds of(FilmSheet film, String name, Optional<SoundBank> bank, Progress progress) {
    if (bank.isEmpty()) {
      return new Sounds(Handoff.sound(film, name), List.of(), Optional.empty());
    }
    progress.step("playing the guide through");
    BankGuide guide = BankGuide.of(film, bank.get());
    return new Sounds(Handoff.sound(film, name, guide), guide.notes(), Optional.of(guide));
  }
}
