package org.barsheet.timing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.align.places.Kept;
import org.barsheet.cues.MotifSearch;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.score.ScoreReader;
import org.barsheet.timing.Finding.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the findings say of motifs, told of the demo's own music. */
class MotifFindingsTest {

  @TempDir private Path folder;

  @Test
  void a_motif_that_is_never_found_is_told_with_the_nearest_thing_to_it() throws IOException {
    List<Finding> findings = findings("dusk: {notes: \"C6/8 F5/4+16 B5/16 F#4/8 D6/8 D3/2\"}");
    assertThat(findings)
        .filteredOn(finding -> finding.sentence().startsWith("dusk"))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.WARNING);
              assertThat(finding.sentence())
                  .matches(
                      "dusk is never found; the nearest places: likeness 0\\.\\d\\d, 0\\.\\d\\d needed"
                          + " \\(.+\\): .+");
              assertThat(finding.place()).startsWith("bar ");
            });
  }

  @Test
  void certain_returns_without_a_panel_are_told_with_their_bars() throws IOException {
    List<Finding> findings =
        findings("tide: {heard-at: {place: bar 1, length: 2 bars, part: Cello}}");
    assertThat(findings)
        .extracting(Finding::sentence)
        .contains("no panel uses 3 certain returns of tide (bars 1, 5, 63)");
  }

  private List<Finding> findings(String motif) throws IOException {
    Path file = folder.resolve("quay.yaml");
    String score = Path.of("scores/lamplighters-quay.mid").toAbsolutePath().toString();
    Files.writeString(
        file,
        """
        title: Quay
        score: '%s'
        film: {frame-rate: 24}
        motifs:
          %s
        panels:
          - {panel: 1, action: Fog}
        """
            .formatted(score, motif),
        UTF_8);
    Plan plan = PlanReader.read(file);
    Music music = MusicFinder.follow(ScoreReader.read(plan.music().score()), plan.music().tempo());
    return TimingPlanner.plan(plan, music, MotifSearch.of(plan, music).occurrences(), Kept.NOTHING)
        .findings();
  }
}
