package org.barsheet.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ProseTest {

  private static List<String> names(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(number -> "n" + number).toList();
  }

  @Test
  void one_of_a_thing_has_no_plural() {
    assertThat(Prose.count(1, "frame")).isEqualTo("1 frame");
    assertThat(Prose.count(12, "frame")).isEqualTo("12 frames");
  }

  @Test
  void a_list_names_eight_and_counts_the_rest() {
    assertThat(Prose.listed(List.of())).isEmpty();
    assertThat(Prose.listed(names(2))).isEqualTo("n1, n2");
    assertThat(Prose.listed(names(8))).isEqualTo("n1, n2, n3, n4, n5, n6, n7, n8");
    assertThat(Prose.listed(names(11))).isEqualTo("n1, n2, n3, n4, n5, n6, n7, n8 and 3 more");
  }
}
