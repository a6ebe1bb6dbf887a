package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongUnaryOperator;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.SoundedNotes;
import org.barsheet.motif.Variation;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.Comparison;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Picks;
import org.barsheet.score.Score;

/** Says what was found in the words and ticks of the score. */
final class OccurrenceWriter {

  private final Score score;
  private final NoteField field;
  private final Motif motif;
  private final Judgment judgment;
  private final SoundingReader reader;

  OccurrenceWriter(
      Score score, NoteField field, Motif motif, Judgment judgment, LongUnaryOperator played) {
    this.judgment = judgment;
    this.score = score;
    this.field = field;
    this.motif = motif;
    this.reader = new SoundingReader(score, field, played);
  }

  /** The returns in order of time, numbered over the certain and likely ones. */
  List<Occurrence> write(List<Hit> hits) {
    List<Occurrence> occurrences = new ArrayList<>();
    int number = 0;
    for (Hit hit : hits) {
      Optional<Certainty> certainty = judgment.of(hit.lead());
      if (certainty.isPresent()) {
        boolean counts = certainty.get() != Certainty.POSSIBLE;
        number += counts ? 1 : 0;
        occurrences.add(write(hit, counts ? number : 0, certainty.get()));
      }
    }
    return occurrences;
  }

  /** One return. */
  Occurrence write(Hit hit, int number, Certainty certainty) {
    Chain chain = reader.withChangedNotes(hit.lead());
    List<Long> ticks = new ArrayList<>();
    List<Integer> pitches = new ArrayList<>();
    for (int i = 0; i < chain.notes().size(); i++) {
      ticks.add(reader.tick(chain, i));
      pitches.add(chain.notes().has(i) ? field.pitch(chain.notes().get(i)) : Picks.NONE);
    }
    int accent = motif.accent().indexIn(ticks.size());
    Comparison comparison = Comparison.of(field, chain);
    List<Voice> voices = new Voices(field, score.ticksPerQuarter()).of(hit);
    return new Occurrence(
        motif.name(),
        number,
        new SoundedNotes(
            ticks,
            pitches,
            ticks.get(accent),
            reader.endTick(chain),
            reader.meantTick(chain, 0),
            reader.meantTick(chain, accent)),
        voices.stream().map(Voice::part).toList(),
        new Variation(
            comparison.forms(),
            comparison.transposition(),
            words(chain, comparison, voices).sentence()),
        Certainties.score(chain),
        certainty);
  }

  /** What a chain would be called, without a word on single notes. */
  String outline(Chain chain) {
    List<Voice> voices = new Voices(field, score.ticksPerQuarter()).of(new Hit(chain, List.of()));
    return words(chain, Comparison.of(field, chain), voices).outline();
  }

  private FormWords words(Chain chain, Comparison comparison, List<Voice> voices) {
    List<Integer> parts = voices.stream().map(Voice::part).toList();
    int above = new Voices(field, score.ticksPerQuarter()).above(chain, parts);
    return new FormWords(score, field, chain, comparison, voices, above);
  }
}
