package org.barsheet.motif.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Occurrence;
import org.barsheet.motif.PlantedMotifs;
import org.barsheet.motif.Sounding;
import org.barsheet.motif.match.KeptNotes;
import org.barsheet.motif.match.Picks;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;

class BeginningsFinderTest {

  @Test
  void beginnings_searched_together_return_where_each_alone_does() {
    SplittableRandom random = new SplittableRandom(17);
    for (int trial = 0; trial < 30; trial++) {
      PlantedMotifs music = new PlantedMotifs(random);
      List<MotifNote> line = PlantedMotifs.motif(random);
      for (int time = 0; time < 5; time++) {
        music.plant(time % 3, 3 + 40 * time + random.nextInt(6), changed(line, random));
      }
      Score score = trial % 2 == 0 ? music.score(0, 1, 2) : music.merged();
      List<List<MotifNote>> beginnings = beginnings(line);
      List<List<Sounding>> together = BeginningsFinder.of(score).find(beginnings);
      OccurrenceFinder alone = OccurrenceFinder.of(score);
      for (int i = 0; i < beginnings.size(); i++) {
        assertThat(together.get(i))
            .as("trial %d, %d notes", trial, beginnings.get(i).size())
            .isEqualTo(soundings(alone.find(motif(beginnings.get(i)))));
      }
    }
  }

  /** Every third note moved by a scale step or so, now and then a note left out. */
  private static List<MotifNote> changed(List<MotifNote> line, SplittableRandom random) {
    List<MotifNote> changed = new ArrayList<>();
    for (MotifNote note : line) {
      int moved = random.nextInt(3) == 0 ? random.nextInt(-2, 3) : 0;
      if (changed.isEmpty() || random.nextInt(12) > 0) {
        changed.add(new MotifNote(note.onset(), note.length(), note.pitch() + moved));
      }
    }
    return changed;
  }

  private static List<List<MotifNote>> beginnings(List<MotifNote> line) {
    List<List<MotifNote>> beginnings = new ArrayList<>();
    for (int notes = line.size(); notes >= 4; notes--) {
      beginnings.add(line.subList(0, notes));
    }
    return beginnings;
  }

  private static Motif motif(List<MotifNote> line) {
    return new Motif("", List.of(line), Accent.FIRST, Match.TONAL, Set.of());
  }

  private static List<Sounding> soundings(List<Occurrence> returns) {
    return returns.stream()
        .map(
            one ->
                new Sounding(
                    one.startTick(), one.notes().endTick(), one.parts().get(0), one.certainty()))
        .toList();
  }

  @Test
  void notes_in_common_are_as_many_as_counting_them_says() {
    SplittableRandom random = new SplittableRandom(6);
    for (int trial = 0; trial < 100; trial++) {
      KeptNotes kept = new KeptNotes(20);
      List<Picks> added = new ArrayList<>();
      for (int i = 0; i < 100; i++) {
        Picks picks = picks(random);
        int judged = added.stream().mapToInt(one -> common(one, picks)).max().orElse(0);
        assertThat(kept.mostShared(picks)).as("trial " + trial).isEqualTo(judged);
        kept.add(picks);
        added.add(picks);
      }
    }
  }

  /** Some of 20 notes in order, some missing. */
  private static Picks picks(SplittableRandom random) {
    int[] notes = new int[6];
    int next = random.nextInt(4);
    for (int i = 0; i < notes.length; i++) {
      notes[i] = random.nextInt(5) == 0 ? Picks.NONE : next;
      next += 1 + random.nextInt(3);
    }
    return new Picks(notes);
  }

  private static int common(Picks one, Picks other) {
    int common = 0;
    for (int i = 0; i < one.size(); i++) {
      for (int k = 0; k < other.size(); k++) {
        common += one.has(i) && one.get(i) == other.get(k) ? 1 : 0;
      }
    }
    return common;
  }
}
