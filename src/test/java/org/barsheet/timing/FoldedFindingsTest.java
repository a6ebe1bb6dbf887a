package org.barsheet.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalLong;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.junit.jupiter.api.Test;

/** Of many findings of which the same can be said, one sentence tells them all. */
class FoldedFindingsTest {

  private static Finding nobody(Severity severity, String opening, String remedy) {
    return new Finding(
            severity,
            Concerns.DIRECTOR,
            "",
            opening,
            OptionalLong.empty(),
            "nobody appears in " + opening,
            remedy)
        .alike("openings show nobody", opening);
  }

  private static List<String> sentences(Finding... findings) {
    return FoldedFindings.of(List.of(findings)).stream().map(Finding::sentence).toList();
  }

  @Test
  void equal_ones_are_told_together_where_the_first_of_them_was() {
    Finding other = nobody(Severity.WARNING, "gate", "");
    assertThat(
            sentences(
                nobody(Severity.REMARK, "hatch", ""),
                other,
                nobody(Severity.REMARK, "lantern", "")))
        .containsExactly("Two openings show nobody: hatch, lantern", "nobody appears in gate");
  }

  @Test
  void one_alone_stays_as_it_is() {
    assertThat(sentences(nobody(Severity.REMARK, "hatch", "")))
        .containsExactly("nobody appears in hatch");
  }

  @Test
  void those_with_another_remedy_are_another_matter() {
    assertThat(
            sentences(
                nobody(Severity.REMARK, "hatch", "open it"), nobody(Severity.REMARK, "gate", "")))
        .hasSize(2);
  }

  @Test
  void errors_are_never_folded() {
    assertThat(sentences(nobody(Severity.ERROR, "hatch", ""), nobody(Severity.ERROR, "gate", "")))
        .hasSize(2);
  }
}
