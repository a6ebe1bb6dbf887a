package org.barsheet.adoption;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.revision.BarNote;
import org.barsheet.revision.HeldPart;
import org.barsheet.revision.ScoreNotes;

/** Which part of a score plays given notes. */
final class PartNotes {

  private final ScoreNotes score;
  private final Map<String, Set<BarNote>> byPart = new HashMap<>();

  PartNotes(ScoreNotes score) {
    this.score = score;
  }

  /**
   * The part that plays all of some notes, at their pitch.
   *
   * @param notes with times from tick 0
   * @param first the part to look at first
   */
  Optional<String> playing(List<BarNote> notes, String first) {
    if (plays(first, notes)) {
      return Optional.of(first);
    }
    return score.parts().stream()
        .map(HeldPart::name)
        .filter(part -> plays(part, notes))
        .findFirst();
  }

  private boolean plays(String part, List<BarNote> notes) {
    return byPart.computeIfAbsent(part, this::notesOf).containsAll(notes);
  }

  private Set<BarNote> notesOf(String name) {
    Set<BarNote> notes = new HashSet<>();
    for (HeldPart part : score.parts()) {
      if (OldMusic.isSame(part.name(), name)) {
        for (int bar = 0; bar < score.bars().size(); bar++) {
          long start = score.bars().get(bar).start();
          part.bars()
              .get(bar)
              .forEach(note -> notes.add(new BarNote(start + note.at(), note.pitch())));
        }
      }
    }
    return notes;
  }
}
