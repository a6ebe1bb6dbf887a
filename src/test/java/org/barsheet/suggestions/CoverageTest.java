package org.barsheet.suggestions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Sounding;
import org.junit.jupiter.api.Test;

class CoverageTest {

  /** All pairs of returns are the judge. */
  @Test
  void returns_cover_others_as_comparing_all_of_them_says() {
    SplittableRandom random = new SplittableRandom(5);
    for (int trial = 0; trial < 200; trial++) {
      List<Sounding> ones = random(random);
      Coverage coverage = new Coverage(ones);
      for (Sounding other : random(random)) {
        boolean judged = ones.stream().anyMatch(one -> 2 * one.shared(other) >= other.length());
        assertThat(coverage.covers(other)).as("trial " + trial).isEqualTo(judged);
      }
    }
  }

  private static List<Sounding> random(SplittableRandom random) {
    List<Sounding> soundings = new ArrayList<>();
    for (int i = random.nextInt(12); i > 0; i--) {
      long start = random.nextInt(200);
      long end = start + random.nextInt(1, 40);
      soundings.add(new Sounding(start, end, 0, Certainty.CERTAIN));
    }
    return soundings;
  }
}
