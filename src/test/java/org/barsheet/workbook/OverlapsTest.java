package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.barsheet.clock.FrameSpan;
import org.junit.jupiter.api.Test;

class OverlapsTest {

  @Test
  void finds_what_looking_at_every_span_finds_in_the_order_given() {
    Random random = new Random(7);
    for (int trial = 0; trial < 200; trial++) {
      List<FrameSpan> spans = new ArrayList<>();
      for (int i = 0; i < 30; i++) {
        spans.add(span(random));
      }
      List<Integer> things = IntStream.range(0, spans.size()).boxed().toList();
      FrameSpan asked = span(random);
      assertThat(new Overlaps<>(things, spans).with(asked))
          .extracting(Overlaps.Lasting::thing)
          .containsExactlyElementsOf(
              things.stream().filter(i -> spans.get(i).overlaps(asked)).toList());
    }
  }

  private static FrameSpan span(Random random) {
    long start = random.nextInt(100);
    return new FrameSpan(start, start + random.nextInt(12));
  }
}
