package org.barsheet.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class FrameSpanTest {

  private final FrameSpan span = new FrameSpan(48, 72);

  @Test
  void the_end_belongs_to_the_next_span() {
    assertThat(span.length()).isEqualTo(24);
    assertThat(span.contains(48)).isTrue();
    assertThat(span.contains(71)).isTrue();
    assertThat(span.contains(72)).isFalse();
    assertThat(span.overlaps(new FrameSpan(72, 80))).isFalse();
    assertThat(span.overlaps(new FrameSpan(71, 80))).isTrue();
  }

  @Test
  void two_spans_overlap_whichever_is_asked() {
    assertThat(span.overlaps(new FrameSpan(40, 48))).isFalse();
    assertThat(span.overlaps(new FrameSpan(40, 49))).isTrue();
  }

  @Test
  void a_span_may_hold_no_frame() {
    FrameSpan empty = new FrameSpan(48, 48);
    assertThat(empty.length()).isZero();
    assertThat(empty.contains(48)).isFalse();
  }

  @Test
  void a_span_does_not_end_before_it_starts() {
    assertThatThrownBy(() -> new FrameSpan(2, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
