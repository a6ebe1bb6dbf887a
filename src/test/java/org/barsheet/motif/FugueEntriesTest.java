package org.barsheet.motif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.barsheet.motif.find.OccurrenceFinder;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;

/**
 * The entries of the subject of J. S. Bach's fugue in C minor, The Well-Tempered Clavier I, BWV
 * 847, typed from the public-domain score, at the bars where printed analyzes give them. The voices
 * around them are scales of our own.
 */
class FugueEntriesTest {

  private static final String SUBJECT =
      "C5/16 B4/16 C5/8 G4/8 Ab4/8 C5/16 B4/16 C5/8 D5/8 G4/8 C5/16 B4/16 C5/8 D5/8 F4/16 G4/16"
          + " Ab4/4 G4/16 F4/16 Eb4/8";
  private static final String ANSWER =
      "G5/16 F#5/16 G5/8 C5/8 Eb5/8 G5/16 F#5/16 G5/8 A5/8 D5/8 G5/16 F#5/16 G5/8 A5/8 C5/16 D5/16"
          + " Eb5/4 D5/16 C5/16 Bb4/8";
  private static final String IN_E_FLAT =
      "Eb5/16 D5/16 Eb5/8 Bb4/8 C5/8 Eb5/16 D5/16 Eb5/8 F5/8 Bb4/8 Eb5/16 D5/16 Eb5/8 F5/8 Ab4/16"
          + " Bb4/16 C5/4 Bb4/16 Ab4/16 G4/8";
  private static final String UP_AND_DOWN = "Eb4/8 F4/8 G4/8 Ab4/8 Bb4/8 Ab4/8 G4/8 F4/8";

  private static final long EIGHTH = ScoreSketch.TICKS_PER_QUARTER / 2;

  @Test
  void every_entry_is_found_in_its_bar_and_voice() {
    List<Occurrence> found = find();
    assertThat(found)
        .extracting(FugueEntriesTest::bar)
        .containsExactly(1L, 3L, 7L, 11L, 15L, 20L, 26L, 29L);
    assertThat(found).extracting(o -> o.parts().get(0)).containsExactly(1, 0, 2, 0, 1, 0, 2, 0);
    assertThat(found).allMatch(o -> o.certainty() == Certainty.CERTAIN);
  }

  @Test
  void the_answer_is_tonal_and_the_relative_major_too() {
    List<Occurrence> found = find();
    assertThat(found.get(0).variation().description()).isEqualTo("as given, in Alto");
    assertThat(found.get(1).variation().description())
        .isEqualTo("tonal, up a fifth, note 4 changed, in Soprano");
    assertThat(found.get(3).variation().forms()).containsExactly(Form.TONAL);
    assertThat(found.get(6).variation().description())
        .startsWith("as given, down 2 octaves, in Bass under");
  }

  private static List<Occurrence> find() {
    Motif motif =
        new Motif("subject", List.of(Notes.parse(SUBJECT)), Accent.FIRST, Match.TONAL, Set.of());
    return OccurrenceFinder.find(score(), motif);
  }

  private static long bar(Occurrence occurrence) {
    return occurrence.startTick() / (8 * EIGHTH) + 1;
  }

  private static Score score() {
    ScoreSketch sketch = new ScoreSketch();
    sketch.part("Soprano").after(3, 1, ANSWER).after(11, 1, IN_E_FLAT);
    sketch.after(20, 1, SUBJECT).after(29, 5, SUBJECT);
    scales(sketch, '5', 5, 6, 7, 8, 9, 13, 14, 15, 16, 17, 18, 24, 25, 26, 27);
    sketch.part("Alto").after(1, 1, SUBJECT).after(15, 1, octaveDown(ANSWER));
    scales(sketch, '4', 3, 4, 7, 8, 11, 12, 18, 20, 21, 26, 27, 28, 29, 30);
    sketch.part("Bass").after(7, 1, octaveDown(SUBJECT));
    sketch.after(26, 5, octaveDown(octaveDown(SUBJECT)));
    scales(sketch, '3', 11, 12, 15, 16, 20, 21, 22, 29, 30, 31);
    return sketch.score();
  }

  private static void scales(ScoreSketch sketch, char octave, int... bars) {
    for (int bar : bars) {
      sketch.bar(bar, UP_AND_DOWN.replace('4', octave));
    }
  }

  private static String octaveDown(String line) {
    List<MotifNote> lower = new ArrayList<>();
    for (MotifNote note : Notes.parse(line)) {
      lower.add(new MotifNote(note.onset(), note.length(), note.pitch() - 12));
    }
    return Notes.print(lower);
  }
}
