package org.barsheet.motif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.find.OccurrenceFinder;
import org.barsheet.motif.match.Transform;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PlantedMotifsTest {

  private static final Set<Form> FORMS =
      Set.of(Form.INVERTED, Form.RETROGRADE, Form.AUGMENTED, Form.DIMINISHED);

  @Test
  void a_planted_motif_is_found_at_its_place_at_the_tier_its_damage_deserves() {
    plantAndFind(40);
  }

  @Test
  @Tag("trial")
  void a_planted_motif_is_found_a_thousand_times_in_a_thousand() {
    plantAndFind(1000);
  }

  @Test
  void a_motif_that_was_not_planted_is_never_certain() {
    findNothing(20);
  }

  @Test
  @Tag("trial")
  void a_motif_that_was_not_planted_is_not_certain_in_a_thousand_scores() {
    findNothing(1000);
  }

  @Test
  void more_notes_elsewhere_lose_no_certain_return() {
    SplittableRandom random = new SplittableRandom(5);
    for (int trial = 0; trial < 40; trial++) {
      PlantedMotifs music = new PlantedMotifs(random);
      List<MotifNote> line = PlantedMotifs.motif(random);
      plantThree(music, line, random);
      List<Long> before = certain(music.score(0, 1, 2), line);
      assertThat(certain(music.withMore(), line)).as("trial " + trial).containsAll(before);
    }
  }

  @Test
  void parts_in_another_order_or_in_one_have_the_same_certain_returns() {
    SplittableRandom random = new SplittableRandom(6);
    for (int trial = 0; trial < 40; trial++) {
      PlantedMotifs music = new PlantedMotifs(random);
      List<MotifNote> line = PlantedMotifs.motif(random);
      plantThree(music, line, random);
      List<Long> certain = certain(music.score(0, 1, 2), line);
      assertThat(certain(music.score(2, 0, 1), line)).as("trial " + trial).isEqualTo(certain);
      assertThat(certain(music.merged(), line)).as("trial " + trial).isEqualTo(certain);
    }
  }

  private static void plantAndFind(int trials) {
    SplittableRandom random = new SplittableRandom(1);
    List<Transform> transforms = Transform.of(FORMS);
    for (int trial = 0; trial < trials; trial++) {
      PlantedMotifs music = new PlantedMotifs(random);
      List<MotifNote> line = PlantedMotifs.motif(random);
      Transform transform = transforms.get(random.nextInt(transforms.size()));
      boolean damaged = random.nextInt(3) == 0;
      List<MotifNote> changed = changed(line, transform, random.nextInt(-4, 5));
      if (damaged) {
        changed.remove(1 + random.nextInt(changed.size() - 2));
      }
      long place = music.plant(random.nextInt(3), random.nextInt(100), changed);
      Motif motif = new Motif("lamp", List.of(line), Accent.FIRST, Match.TONAL, FORMS);
      List<Occurrence> found = OccurrenceFinder.find(music.score(0, 1, 2), motif);
      assertThat(found)
          .as("trial %d: %s of %s in %s", trial, transform, Notes.print(line), found)
          .anyMatch(o -> o.startTick() == place && (damaged || o.certainty() == Certainty.CERTAIN));
    }
  }

  private static void findNothing(int trials) {
    SplittableRandom random = new SplittableRandom(2);
    for (int trial = 0; trial < trials; trial++) {
      Score score = new PlantedMotifs(random).score(0, 1, 2);
      List<MotifNote> line = PlantedMotifs.motif(random);
      assertThat(certain(score, line)).as("trial " + trial).isEmpty();
    }
  }

  private static void plantThree(
      PlantedMotifs music, List<MotifNote> line, SplittableRandom random) {
    for (int part = 0; part < 3; part++) {
      music.plant(part, 70 * part + random.nextInt(30), line);
    }
  }

  private static List<Long> certain(Score score, List<MotifNote> line) {
    Motif motif = new Motif("lamp", List.of(line), Accent.FIRST, Match.TONAL, Set.of());
    return OccurrenceFinder.find(score, motif).stream()
        .filter(o -> o.certainty() == Certainty.CERTAIN)
        .map(Occurrence::startTick)
        .toList();
  }

  /** A line as a composer would change it, written apart from the finder's own transforms. */
  private static List<MotifNote> changed(List<MotifNote> line, Transform transform, int up) {
    BigFraction end = BigFraction.ZERO;
    for (MotifNote note : line) {
      end = note.onset().add(note.length());
    }
    List<MotifNote> changed = new ArrayList<>();
    for (MotifNote note : line) {
      BigFraction onset =
          transform.retrograde() ? end.subtract(note.onset().add(note.length())) : note.onset();
      int pitch = transform.inverted() ? 2 * 60 - note.pitch() : note.pitch();
      changed.add(
          new MotifNote(
              onset.multiply(transform.stretch()),
              note.length().multiply(transform.stretch()),
              pitch + up));
    }
    changed.sort((a, b) -> a.onset().compareTo(b.onset()));
    return changed;
  }
}
