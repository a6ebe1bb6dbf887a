package org.barsheet.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Slow;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of movements nobody could photograph as they stand; a square is 10 mm. */
class MovementFindingsTest {

  @TempDir private Path folder;

  private Plan plan(String hand, String... openings) throws IOException {
    StringBuilder text =
        new StringBuilder(
            """
            title: Quay
            score: quay.mid
            film: {frame-rate: 24}
            artwork: {square: 10 mm, models: {quay: {}, lamp: {enlarged: 2}}}
            """);
    text.append("hand: {").append(hand).append("}\nopenings:\n");
    for (String opening : openings) {
      text.append("  ").append(opening).append('\n');
    }
    Path file = folder.resolve("quay.yaml");
    Files.writeString(file, text.append("panels: [{panel: 1}]\n"));
    return PlanReader.read(file);
  }

  private static List<Finding> findings(Plan plan, Slow slow, int photographs) {
    Opening first = plan.workshop().openings().get(0);
    Movement movement =
        Movement.of(
            first.name(),
            first,
            plan.workshop().openings().stream().map(Opening::name).toList(),
            plan.workshop().artwork(),
            plan.workshop().hand(),
            slow,
            EvenIn.ANGLE,
            photographs);
    return new MovementFindings(plan).of(List.of(movement));
  }

  private static String flap(String name, String more) {
    return name
        + ": {left: 1, top: 1, width: 3, height: 2, model: lamp, hinge: left, "
        + more
        + "}";
  }

  @Test
  void a_smooth_movement_that_is_held_all_the_way_is_not_mentioned() throws IOException {
    String held = "held-by: [putty up to 25 mm, thread from 200 mm above the hinge]";
    Plan plan = plan("largest-step: 6 mm", flap("lamp-1", "to: 90 deg, " + held));
    assertThat(findings(plan, Slow.NONE, 30)).isEmpty();
  }

  /** 2 · 60 · sin 4.5° = 9.4 mm; 2 · 60 · sin(Δ/2) ≤ 6 mm asks for Δ ≤ 5.73°: 16 photographs. */
  @Test
  void a_step_over_the_plans_limit_is_a_warning_with_a_number_that_is_enough() throws IOException {
    Plan plan = plan("largest-step: 6 mm", flap("lamp-1", "to: 90 deg"));
    Finding finding = findings(plan, Slow.NONE, 10).get(0);
    assertThat(finding.severity()).isEqualTo(Severity.WARNING);
    assertThat(finding.sentence())
        .isEqualTo("lamp-1 jumps 9.4 mm to photograph 1; its limit is 6.0 mm");
    assertThat(finding.remedy()).startsWith("take 16 photographs");
  }

  @Test
  void without_a_limit_it_is_a_note_against_an_eighth_of_the_way() throws IOException {
    Finding finding = findings(plan("", flap("lamp-1", "to: 90 deg")), Slow.END, 8).get(0);
    assertThat(finding.severity()).isEqualTo(Severity.REMARK);
    assertThat(finding.sentence()).contains("11.3 deg, an eighth of the movement");
  }

  /** 60 · sin 24° = 24.4 mm is the last height on putty, 60 · sin 27° = 27.2 mm the first above. */
  @Test
  void a_height_that_nothing_reaches_is_told() throws IOException {
    Plan plan = plan("", flap("lamp-1", "to: 90 deg, held-by: putty up to 25 mm"));
    assertThat(findings(plan, Slow.NONE, 30))
        .extracting(Finding::sentence)
        .containsExactly("nothing holds lamp-1 from photograph 9, 27.2 mm above the table");
  }

  @Test
  void a_thread_cannot_pull_past_upright() throws IOException {
    String held = "held-by: thread from 200 mm above the hinge";
    assertThat(findings(plan("", flap("lamp-1", "to: 120 deg, " + held)), Slow.NONE, 30))
        .extracting(Finding::sentence)
        .allMatch(sentence -> sentence.contains("can only pull it to 90°"))
        .hasSize(1);
  }

  @Test
  void photographs_that_look_alike_are_named() throws IOException {
    assertThat(findings(plan("angle: 1 deg", flap("lamp-1", "to: 90 deg")), Slow.END, 30))
        .extracting(Finding::sentence)
        .containsExactly(
            "2 photographs move less than a hand can set and look like the one before:"
                + " lamp-1 029, lamp-1 030");
  }

  @Test
  void one_model_cannot_have_flaps_of_two_sizes() throws IOException {
    String other = flap("lamp-2", "to: 90 deg").replace("width: 3", "width: 2");
    assertThat(findings(plan("", flap("lamp-1", "to: 90 deg"), other), Slow.NONE, 30))
        .extracting(Finding::sentence)
        .containsExactly(
            "lamp-1 uses the measurements of lamp-1; lamp-2 has a different size or support");
  }
}
