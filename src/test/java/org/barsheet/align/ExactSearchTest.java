package org.barsheet.align;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/** Leaving out places that are proved too dear changes neither the layout nor a near margin. */
class ExactSearchTest {

  @Test
  void it_finds_what_the_whole_table_finds() {
    for (long seed = 1; seed <= 3; seed++) {
      check(seed);
    }
  }

  private static void check(long seed) {
    AlignerInput input = plan(new Random(seed)).input();
    List<Stage> all = new PanelAligner(input).stages();
    AlignerTable table = new AlignerTable(all, input.filmFrames());
    ExactSearch search = ExactSearch.of(new PanelAligner(input).places(List.of()), input);
    assertThat(places(search.stages())).as("seed %d", seed).isLessThan(places(all));
    assertThat(search.table().best()).as("seed %d", seed).isEqualTo(table.best());
    assertThat(margins(all, table))
        .as("seed %d", seed)
        .isEqualTo(margins(search.stages(), search.table()));
  }

  private static long places(List<Stage> stages) {
    return stages.stream().mapToLong(Stage::size).sum();
  }

  /** Every place that costs little more than the best, with how much more. */
  static Map<String, Long> margins(List<Stage> stages, AlignerTable table) {
    Map<String, Long> near = new TreeMap<>();
    for (int p = 0; p < stages.size(); p++) {
      for (int i = 0; i < stages.get(p).size(); i++) {
        long more = table.bestThrough(p, i) - table.best();
        if (more <= Alternatives.DEAREST) {
          Candidate place = stages.get(p).candidate(i);
          String name =
              p + " at " + place.cut() + ", " + place.cue().id() + ", " + place.afterCut();
          near.merge(name, more, Math::min);
        }
      }
    }
    return near;
  }

  private static PlanBuilder plan(Random random) {
    MusicBuilder music = new MusicBuilder().tempo(100).bars(200).tempo(132).bars(160);
    for (int bar = 20; bar <= 340; bar += 40) {
      music.mark("M" + bar, bar);
    }
    PlanBuilder plan = new PlanBuilder(music);
    List<String> lengths = List.of("", "", "2 bars", "3 beats", "5 bars", "1..6 bars");
    for (int p = 0; p < 50; p++) {
      boolean placed = p > 0 && p % 12 == 0 && random.nextBoolean();
      String cue = placed ? "bar " + (p * 7 + random.nextInt(8)) : "";
      plan.panel(cue, lengths.get(random.nextInt(lengths.size())));
    }
    return plan;
  }
}
