package org.barsheet.align;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.CutWindow;
import org.barsheet.input.InputException;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.RandomPlans;
import org.barsheet.timing.Reveals;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The aligner finds what counting every layout finds: the optimum, its tie-break, all margins. */
class AlignerAgainstBruteForceTest {

  private int possible;
  private int impossible;

  @Test
  void on_a_few_hundred_small_plans() {
    check(1, 300);
    assertThat(impossible).isGreaterThan(30);
  }

  @Test
  @Tag("trial")
  void on_ten_thousand_small_plans() {
    check(1000, 10_000);
  }

  /** One panel on a return's first note, another within it, a third on its last note. */
  @Test
  void on_plans_whose_returns_are_longer_than_a_shot() {
    int shared = 0;
    for (long seed = 1; seed <= 300; seed++) {
      shared += check(seed, onLongReturns(new Random(seed)));
    }
    assertThat(shared).isGreaterThan(100);
    assertThat(possible).isGreaterThan(150);
  }

  private static PlanBuilder onLongReturns(Random random) {
    MusicBuilder music =
        new MusicBuilder()
            .tempo(120)
            .bars(8)
            .longMotif("glimmer", 2, 8 + random.nextInt(5))
            .longMotif("glimmer", 4 + random.nextInt(2), 8)
            .motif("glimmer", 7, 1);
    PlanBuilder plan = new PlanBuilder(music).opening("lamp-1", "small-lamp").panel("", "");
    for (int p = 0; p < 4; p++) {
      if (random.nextInt(3) == 0) {
        plan.panel("glimmer", "", List.of(Reveals.reveal("lamp-1", 3, 2)));
      } else {
        List<String> cues = List.of("glimmer", "1 beats into panel " + (p + 1), "");
        plan.panel(cues.get(random.nextInt(cues.size())), random.nextBoolean() ? "" : "2 beats");
      }
    }
    return plan;
  }

  /** So many plans that can be kept, and those between them that cannot. */
  private void check(long firstSeed, int count) {
    for (long seed = firstSeed; possible < count; seed++) {
      check(seed, new RandomPlans(seed, 6, 4, seed % 3 == 0).next());
    }
  }

  /** Checks one plan; returns how often panels that are no neighbors wanted one return. */
  private int check(long seed, PlanBuilder plan) {
    AlignerInput input;
    PanelAligner aligner;
    try {
      input = plan.input();
      aligner = new PanelAligner(input);
    } catch (InputException unfound) {
      return 0;
    }
    List<Stage> stages = aligner.stages();
    BruteForce all = new BruteForce(input, stages);
    AlignerTable table = new AlignerTable(stages, input.filmFrames());
    if (all.layouts().isEmpty()) {
      impossible++;
      assertThat(table.best()).as("seed %d", seed).isEqualTo(Costs.IMPOSSIBLE);
      return all.shared();
    }
    possible++;
    long least = all.layouts().stream().mapToLong(BruteForce.Whole::cost).min().orElseThrow();
    assertThat(table.best()).as("seed %d", seed).isEqualTo(least);
    assertThat(cuts(stages, table.bestLayout()))
        .as("seed %d", seed)
        .isEqualTo(earliest(stages, all, least));
    Map<List<Integer>, Long> through = all.cheapestThrough();
    for (int p = 0; p < stages.size(); p++) {
      for (int i = 0; i < stages.get(p).size(); i++) {
        assertThat(table.bestThrough(p, i))
            .as("seed %d, panel %d, place %d", seed, p, i)
            .isEqualTo(through.getOrDefault(List.of(p, i), Costs.IMPOSSIBLE));
      }
    }
    checkIdeas(seed, new DifferentLayouts(stages, table), table, all);
    PlanPlaces places = aligner.places(List.of());
    List<CutWindow> possible = PanelTerms.possibleCuts(places.terms(), input.filmFrames());
    for (ExactSearch search :
        List.of(ExactSearch.of(places, input), ExactSearch.nearGood(places, possible, input))) {
      assertThat(cuts(search.stages(), search.table().bestLayout()))
          .as("seed %d", seed)
          .isEqualTo(earliest(stages, all, least));
      assertThat(ExactSearchTest.margins(search.stages(), search.table()))
          .as("seed %d", seed)
          .isEqualTo(ExactSearchTest.margins(stages, table));
    }
    return all.shared();
  }

  /** Each layout is the cheapest with an idea that none before it has, and none is left out. */
  private static void checkIdeas(
      long seed, DifferentLayouts different, AlignerTable table, BruteForce all) {
    Map<DifferentLayouts.Idea, Long> cheapest = new HashMap<>();
    for (BruteForce.Whole whole : all.layouts()) {
      if (whole.cost() <= table.best() + Alternatives.DEAREST) {
        int[] layout = whole.places().stream().mapToInt(i -> i).toArray();
        ideas(different, layout).forEach(idea -> cheapest.merge(idea, whole.cost(), Math::min));
      }
    }
    long before = table.best();
    Set<DifferentLayouts.Idea> had = new HashSet<>();
    List<int[]> layouts = different.first(Integer.MAX_VALUE);
    assertThat(layouts.get(0)).as("seed %d", seed).isEqualTo(table.bestLayout());
    for (int[] layout : layouts.subList(1, layouts.size())) {
      long cost = table.costOf(layout);
      assertThat(cost).as("seed %d", seed).isGreaterThanOrEqualTo(before);
      assertThat(ideas(different, layout))
          .as("seed %d", seed)
          .anyMatch(idea -> !had.contains(idea) && Long.valueOf(cost).equals(cheapest.get(idea)));
      had.addAll(ideas(different, layout));
      before = cost;
    }
    assertThat(had).as("seed %d", seed).isEqualTo(cheapest.keySet());
  }

  private static Set<DifferentLayouts.Idea> ideas(DifferentLayouts different, int[] layout) {
    return IntStream.range(0, layout.length)
        .filter(p -> different.isOther(p, layout[p]))
        .mapToObj(p -> different.idea(p, layout[p]))
        .collect(Collectors.toSet());
  }

  private static List<Long> cuts(List<Stage> stages, int[] layout) {
    return IntStream.range(0, layout.length).mapToObj(p -> stages.get(p).cut(layout[p])).toList();
  }

  private static List<Long> earliest(List<Stage> stages, BruteForce all, long least) {
    return all.layouts().stream()
        .filter(layout -> layout.cost() == least)
        .map(layout -> cuts(stages, layout.places().stream().mapToInt(i -> i).toArray()))
        .min(AlignerAgainstBruteForceTest::compare)
        .orElseThrow();
  }

  private static int compare(List<Long> one, List<Long> other) {
    return IntStream.range(0, one.size())
        .map(i -> Long.compare(one.get(i), other.get(i)))
        .filter(c -> c != 0)
        .findFirst()
        .orElse(0);
  }
}
