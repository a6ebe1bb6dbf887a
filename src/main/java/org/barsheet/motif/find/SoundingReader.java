package org.barsheet.motif.find;

import java.util.Optional;
import java.util.function.LongUnaryOperator;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Sounding;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.NoteField;
import org.barsheet.score.Score;

/** Reads off a score where a chain sounds. */
final class SoundingReader {

  /** A changed note is looked for within 1/24 of a quarter note. */
  private static final int CHANGED_NOTE = 24;

  private final NoteField field;
  private final LongUnaryOperator played;
  private final int ticksPerQuarter;

  /**
   * A reader.
   *
   * @param played at which tick it is played what is written at one
   */
  SoundingReader(Score score, NoteField field, LongUnaryOperator played) {
    this.field = field;
    this.played = played;
    this.ticksPerQuarter = score.ticksPerQuarter();
  }

  /** Where a return sounds; empty if it is too far from its motif to count. */
  Optional<Sounding> sounding(Hit hit, Judgment judgment) {
    return judgment.of(hit.lead()).map(certainty -> sounding(hit.lead(), certainty));
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

  /** Onset of a note as played; of a missing one where it would sound. */
  long tick(Chain chain, int i) {
    return chain.notes().has(i)
        ? field.playedOn(chain.notes().get(i))
        : played.applyAsLong(Math.max(0, chain.start() + chain.pattern().onset(i)));
  }

  /** Where a note is meant to sound, however a hand plays it. */
  long meantTick(Chain chain, int i) {
    return chain.notes().has(i)
        ? played.applyAsLong(field.onTick(chain.notes().get(i)))
        : tick(chain, i);
  }

  /** End of the last note as played; if that is missing, where it would be. */
  long endTick(Chain chain) {
    int last = chain.notes().size() - 1;
    if (!chain.notes().has(last)) {
      return Math.max(1, played.applyAsLong(chain.start() + chain.pattern().end()));
    }
    return field.playedOff(chain.notes().get(last));
  }
}
