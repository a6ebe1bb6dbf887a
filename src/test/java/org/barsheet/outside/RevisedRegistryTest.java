package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.revision.BarNote;
import org.barsheet.revision.Fate;
import org.barsheet.revision.HeldBar;
import org.barsheet.revision.HeldPart;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Real scores with bars put in and taken out at seeded places: what becomes of every other bar. */
class RevisedRegistryTest {

  private static final int TRIALS = 20;
  private static final int BLOCK = 4;

  /**
   * Notes none of the scores has in this rhythm: three of the lowest octave on ninths of a beat.
   */
  private static final List<BarNote> STRANGE =
      List.of(new BarNote(0, 1), new BarNote(5, 2), new BarNote(11, 1));

  private static ScoreNotes score(String name) {
    return ScoreNotes.of(
        MusicFinder.follow(ScoreReader.read(RegistryScores.score(name)), TempoRequest.DEFAULT));
  }

  /** The bars of a score in an order of their own; -1 is a bar of strange notes. */
  private static ScoreNotes arranged(ScoreNotes score, List<Integer> order) {
    List<HeldBar> bars = new ArrayList<>();
    long at = 0;
    for (int i = 0; i < order.size(); i++) {
      HeldBar bar = score.bars().get(Math.max(0, order.get(i)));
      long shift = at - bar.start();
      bars.add(
          new HeldBar(
              i + 1,
              1,
              bar.beats().stream().map(beat -> beat + shift).toList(),
              bar.end() + shift));
      at += bar.length();
    }
    List<HeldPart> parts =
        score.parts().stream()
            .map(
                part ->
                    new HeldPart(
                        part.name(),
                        part.drums(),
                        order.stream()
                            .map(bar -> bar < 0 ? STRANGE : part.bars().get(bar))
                            .toList()))
            .toList();
    return new ScoreNotes(bars, parts);
  }

  private static List<Integer> everyBar(ScoreNotes score) {
    return new ArrayList<>(IntStream.range(0, score.bars().size()).boxed().toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "classical/clair-de-lune.mid",
        "classical/fur-elise.mid",
        "classical/mozart-k545-mvt1.mid",
        "classical/bach-prelude-c-major-bwv846.mid"
      })
  void a_bar_that_is_left_is_found_or_asked_about_and_none_is_guessed(String name) {
    ScoreNotes before = score(name);
    Random random = new Random(29);
    int kept = 0;
    int wrong = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      List<Integer> order = everyBar(before);
      int place = 1 + random.nextInt(order.size() - BLOCK - 1);
      if (trial % 2 == 0) {
        order.addAll(place, Collections.nCopies(BLOCK, -1));
      } else {
        order.subList(place, place + BLOCK).clear();
      }
      Revision revision = Revision.between(before, arranged(before, order));
      for (int now = 0; now < order.size(); now++) {
        if (order.get(now) >= 0) {
          kept++;
          Fate<Integer> fate = revision.ofBar(order.get(now));
          wrong += fate.possible().contains(now) ? 0 : 1;
        }
      }
    }
    assertThat((double) wrong / kept).as("%d of %d bars", wrong, kept).isLessThanOrEqualTo(0.003);
  }

  @ParameterizedTest
  @ValueSource(strings = {"classical/clair-de-lune.mid", "classical/fur-elise.mid"})
  void parts_in_another_order_under_other_names_are_no_change(String name) {
    ScoreNotes before = score(name);
    List<HeldPart> parts = new ArrayList<>();
    for (HeldPart part : before.parts()) {
      parts.add(0, new HeldPart("Track of " + part.name(), part.drums(), part.bars()));
    }
    Revision revision = Revision.between(before, new ScoreNotes(before.bars(), parts));
    assertThat(revision.sameNotes()).isTrue();
    for (int bar : everyBar(before)) {
      assertThat(revision.ofBar(bar)).isEqualTo(new Fate.Kept<>(bar, false));
    }
  }
}
