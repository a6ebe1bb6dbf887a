package org.barsheet.motif;

import java.util.Optional;
import org.barsheet.score.Score;

/** Reads off a score where a chain sounds. */
final class SoundingReader {

  /** A changed note is looked for within 1/24 of a quarter note. */
  private static final int CHANGED_NOTE = 24;

  private final NoteField field;
  private final int ticksPerQuarter;

  SoundingReader(Score score, NoteField field) {
    this.field = field;
    this.ticksPerQuarter = score.ticksPerQuarter();
  }

  /** Where a return sounds; empty if it is too far from its motif to count. */
  Optional<Sounding> sounding(Hit hit) {
    return Certainties.of(hit.lead()).map(certainty -> sounding(hit.lead(), certainty));
  }

  private Sounding sounding(Chain lead, Certainty certainty) {
    Chain chain = withChangedNotes(lead);
    int part = new Voices(field, ticksPerQuarter).leading(lead);
    return new Sounding(tick(chain, 0), endTick(chain), part, certainty);
  }

  /** The same with changed notes for missing ones. */
  Chain withChangedNotes(Chain chain) {
    return chain.withChangedNotes(field, ticksPerQuarter / CHANGED_NOTE);
  }

  /** Onset of a note; of a missing one where it would sound. */
  long tick(Chain chain, int i) {
    return chain.notes().has(i)
        ? field.onTick(chain.notes().get(i))
        : Math.max(0, chain.start() + chain.pattern().onset(i));
  }

  /** End of the last note; if that is missing, where it would be. */
  long endTick(Chain chain) {
    int last = chain.notes().size() - 1;
    if (!chain.notes().has(last)) {
      return Math.max(1, chain.start() + chain.pattern().end());
    }
    int note = chain.notes().get(last);
    return field.onTick(note) + field.length(note);
  }
}
