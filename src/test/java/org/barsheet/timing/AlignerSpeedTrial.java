package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.management.ManagementFactory;
import java.util.List;
import org.barsheet.align.Alignment;
import org.barsheet.align.PanelAligner;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.input.InputException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How long large plans take; the figures are printed, and only the answers are tested. */
class AlignerSpeedTrial {

  private static final int PANELS = 400;

  @Test
  @Tag("evaluate")
  void four_hundred_panels_on_three_thousand_candidates() {
    for (int round = 0; round < 2; round++) {
      measure("lengths asked", "2 bars");
      measure("ranges", "1..4 bars");
      measure("every fortieth panel placed", "placed");
      measure("no lengths", "");
    }
  }

  @Test
  @Tag("evaluate")
  void a_large_plan_that_cannot_be_kept() {
    MusicBuilder music = new MusicBuilder().tempo(100).bars(750);
    PlanBuilder plan = new PlanBuilder(music);
    for (int p = 0; p < PANELS; p++) {
      plan.panel(p == 200 ? "bar 60" : "", p % 2 == 0 ? "1..4 bars" : "");
    }
    for (int round = 0; round < 2; round++) {
      AlignerInput input = plan.input();
      long start = cpu();
      assertThatThrownBy(() -> new PanelAligner(input).align()).isInstanceOf(InputException.class);
      System.out.println("refused after " + (cpu() - start) / 1_000_000 + " ms of processor time");
    }
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void measure(String name, String length) {
    boolean placed = length.equals("placed");
    MusicBuilder music = new MusicBuilder().tempo(100).bars(400).tempo(132).bars(350);
    for (int bar = 20; bar <= 740; bar += 24) {
      music.mark("M" + bar, bar);
    }
    PlanBuilder plan = new PlanBuilder(music);
    for (int p = 0; p < PANELS; p++) {
      boolean here = placed && p > 0 && p % 40 == 0;
      plan.panel(here ? "bar " + (p / 40 * 75 + p % 7) : "", placed ? "" : length);
    }
    AlignerInput input = plan.input();
    long start = cpu();
    Alignment alignment = new PanelAligner(input).align();
    long millis = (cpu() - start) / 1_000_000;
    System.out.println(
        name
            + ": "
            + input.freePlaces().size()
            + " candidates, "
            + millis
            + " ms of processor time, cost "
            + alignment.layout().cost());
    List<Long> cuts = alignment.layout().places().stream().map(Candidate::cut).toList();
    assertThat(cuts).isSorted().doesNotHaveDuplicates().hasSize(PANELS);
  }
}
