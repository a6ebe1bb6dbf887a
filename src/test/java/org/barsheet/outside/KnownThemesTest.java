package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.find.OccurrenceFinder;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Test;

/**
 * Returns of well-known themes in scores nobody here wrote. Where they are is common knowledge of
 * the pieces; the files write repeats out, and their bars are counted as they are played.
 */
class KnownThemesTest {

  private static final String SUBJECT = "C4/8 D4/8 E4/8 F4/8+16 G4/32 F4/32 E4/8 A4/8 D4/8 G4/8";

  /**
   * Sonata in C major, K. 545, first movement: the first theme opens both times the exposition is
   * played, and opens the recapitulation (bar 42 as printed) in F major, a fourth higher, twice.
   */
  @Test
  void the_first_theme_of_a_sonata_opens_exposition_and_recapitulation() {
    Music music = read("classical/mozart-k545-mvt1.mid");
    List<Occurrence> found = find(music, "C5/2 E5/4 G5/4 B4/4+8 C5/16 D5/16 C5/4");
    assertThat(places(music, found)).containsExactly("bar 1", "bar 29", "bar 70", "bar 115");
    assertThat(found)
        .extracting(occurrence -> occurrence.variation().transposition())
        .containsExactly(0, 0, 5, 5);
    assertThat(found).allMatch(one -> one.certainty() == Certainty.CERTAIN);
  }

  /**
   * Bagatelle in A minor, WoO 59: the theme begins with the upbeat and comes twice in each of its
   * sections; at its last return but two a chromatic run takes the place of its first two notes.
   */
  @Test
  void a_theme_that_begins_with_the_upbeat_is_found_on_the_third_beat() {
    Music music = read("classical/fur-elise.mid");
    List<Occurrence> found = find(music, "E5/16 Eb5/16 E5/16 Eb5/16 E5/16 B4/16 D5/16 C5/16 A4/8");
    assertThat(found)
        .extracting(one -> music.bars().locate(one.startTick()).bar())
        .containsExactly(0, 4, 8, 12, 22, 26, 36, 40, 59, 63, 73, 77, 107, 117, 121);
    assertThat(places(music, found)).allMatch(place -> place.endsWith(" beat 3"));
    assertThat(found).allMatch(one -> one.certainty() == Certainty.CERTAIN);
  }

  /**
   * Fugue in C major, BWV 846, which follows a prelude of 35 bars in this file: the 23 whole
   * entries of its subject with the bars and voices (soprano 2 to bass 5) that analyzes give.
   */
  @Test
  void every_entry_of_a_fugue_in_four_voices_is_found_in_its_bar_and_voice() {
    Music music = read("classical/bach-prelude-c-major-bwv846.mid");
    List<Occurrence> found = find(music, SUBJECT);
    assertThat(found)
        .extracting(one -> music.bars().locate(one.startTick()).bar() - 35)
        .containsExactly(
            1, 2, 4, 5, 7, 7, 9, 10, 10, 12, 14, 14, 15, 16, 16, 17, 17, 19, 19, 20, 21, 24, 24);
    assertThat(found)
        .extracting(one -> one.parts().get(0))
        .containsExactly(3, 2, 4, 5, 2, 4, 3, 5, 3, 4, 3, 4, 5, 2, 3, 4, 5, 4, 3, 2, 4, 4, 3);
    assertThat(found).allMatch(one -> one.certainty() == Certainty.CERTAIN);
  }

  /** In bar 15 of the same fugue the soprano begins the subject and breaks off. */
  @Test
  void an_entry_that_breaks_off_is_possible_where_shortened_ones_are_asked_for() {
    Music music = read("classical/bach-prelude-c-major-bwv846.mid");
    assertThat(find(music, SUBJECT, Form.SHORTENED))
        .filteredOn(one -> one.certainty() == Certainty.POSSIBLE)
        .singleElement()
        .satisfies(
            one -> {
              assertThat(music.bars().locate(one.startTick()).bar() - 35).isEqualTo(15);
              assertThat(one.parts()).containsExactly(2);
              assertThat(one.number()).isZero();
            });
  }

  private static Music read(String name) {
    Score score = ScoreReader.read(RegistryScores.score(name));
    return MusicFinder.follow(score, TempoRequest.DEFAULT);
  }

  private static List<Occurrence> find(Music music, String notes, Form... forms) {
    List<List<MotifNote>> shapes = List.of(Notes.parse(notes));
    return OccurrenceFinder.find(
        music.score(), new Motif("theme", shapes, Accent.FIRST, Match.TONAL, Set.of(forms)));
  }

  private static List<String> places(Music music, List<Occurrence> found) {
    return found.stream().map(one -> music.bars().locate(one.startTick()).toString()).toList();
  }
}
