package org.barsheet.production;

import java.util.List;
import org.barsheet.cues.MotifSearch;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.Quantised;
import org.barsheet.suggestions.MotifSuggestions;
import org.barsheet.suggestions.Suggestion;

/** Motifs nobody named, in written music and in playing. */
final class Suggestions {

  private Suggestions() {}

  /** The most telling first; those of playing in the note values that its beats make likely. */
  static List<Suggestion> of(Music music) {
    if (!MotifSearch.isPlayedFreely(music) || !Quantised.isPossible(music)) {
      return MotifSuggestions.of(music.score());
    }
    Quantised quantised = Quantised.of(music);
    return MotifSuggestions.of(quantised.score()).stream()
        .map(found -> found.at(found.returns().stream().map(quantised::playedTick).toList()))
        .toList();
  }
}
