package org.barsheet.plan.begin;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.motif.Notes;
import org.barsheet.plan.Length;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.pulse.TempoRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FirstPlanTest {

  private static final FirstPlan FIRST =
      new FirstPlan(
          "The \"tide\": a film",
          "music/high & low.mid",
          Map.of("frame-rate", "25", "first-frame", "10:00:00:00"),
          List.of(
              FirstPlan.FirstMotif.heardAt(
                  "motif-a",
                  new Place.AtBar(9, java.util.OptionalInt.empty(), Length.parse("2 s").least()),
                  Length.parse("5 beats"),
                  "Celesta: 1st",
                  "heard 14 times # certainly"),
              FirstPlan.FirstMotif.written("motif-b", "A3/4 C#4/8 r/8 D4/2+8", "")),
          List.of(
              new FirstPlan.FirstPanel("1", "", "", "4 bars"),
              new FirstPlan.FirstPanel("2", "Verse: soft", "mark Verse: 1", ""),
              new FirstPlan.FirstPanel("3", "- no -", "motif-a 2", "2..4 bars")),
          List.of("Celesta: 1st", "Cello"));

  @TempDir private Path folder;

  private Plan read(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.write(file, bytes);
    return PlanReader.read(file);
  }

  @Test
  void a_first_plan_reads_back_from_yaml() throws IOException {
    String yaml = PlanWriter.yaml(FIRST);
    assertMeansFirst(read("first.yaml", yaml.getBytes(UTF_8)));
    assertThat(yaml).contains("glimmer near bar 33", "  # tail: 0 s");
  }

  @Test
  void a_first_plan_reads_back_from_a_workbook() throws IOException {
    assertMeansFirst(read("first.xlsx", PlanWriter.workbook(FIRST)));
  }

  private void assertMeansFirst(Plan plan) {
    assertThat(plan.title()).isEqualTo("The \"tide\": a film");
    assertThat(plan.music().score()).isEqualTo(folder.resolve("music/high & low.mid"));
    assertThat(plan.film().rate()).isEqualTo(FrameRate.FPS_25);
    assertThat(plan.film().firstFrame()).hasToString("10:00:00:00");
    MotifRequest.HeardAt heard = (MotifRequest.HeardAt) plan.motifs().get(0).shapes().get(0);
    assertThat(heard.place()).hasToString("bar 9 beat 2");
    assertThat(heard.length()).hasToString("5 beats");
    assertThat(heard.part()).isEqualTo("Celesta: 1st");
    assertThat(plan.motifs().get(1).shapes())
        .containsExactly(new MotifRequest.Written(Notes.parse("A3/4 C#4/8 r/8 D4/2+8")));
    assertThat(plan.panels())
        .extracting(Panel::action)
        .containsExactly("", "Verse: soft", "- no -");
    assertThat(plan.panels().get(1).cue()).isEqualTo(new Place.AtMark("Verse: 1"));
    assertThat(plan.panels().get(2).length()).contains(Length.parse("2..4 bars"));
  }

  @Test
  void a_plan_of_a_title_a_score_and_a_rate_reads_back_too() throws IOException {
    FirstPlan least =
        new FirstPlan("x", "x.mid", Map.of("frame-rate", "24"), List.of(), List.of(), List.of());
    byte[] yaml = PlanWriter.yaml(least).getBytes(UTF_8);
    assertThat(read("least.yaml", yaml).panels()).isEmpty();
    assertThat(read("least.xlsx", PlanWriter.workbook(least)).motifs()).isEmpty();
  }

  @Test
  void every_setting_shown_as_a_comment_can_be_used_as_it_stands() throws IOException {
    FirstPlan least =
        new FirstPlan("x", "x.mid", Map.of("frame-rate", "24"), List.of(), List.of(), List.of());
    String used =
        PlanWriter.yaml(least)
            .lines()
            .map(line -> line.replaceFirst("^(\\s*)# ", "$1"))
            .collect(Collectors.joining("\n"));
    Plan plan = read("used.yaml", used.getBytes(UTF_8));
    assertThat(plan.text().given())
        .contains(
            "film.tail",
            "music.felt-beat",
            "music.pins",
            "motifs.tide.notes",
            "performers.cello.part");
    assertThat(plan.panels().get(0).reveals()).hasSize(1);
    assertThat(plan.music().tempo().pins())
        .containsExactly(new TempoRequest.Pin(1, Seconds.parse("0.28")));
  }
}
