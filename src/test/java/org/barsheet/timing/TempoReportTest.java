package org.barsheet.timing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.align.places.Kept;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.MotifSearch;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sections, advice and pins, told of the demo's score at 24 fps, on twos. */
class TempoReportTest {

  @TempDir private Path folder;

  /** The score's tempos are its composer's: 72 and 96 to the minute, 20-0 and 15-0. */
  @Test
  void each_section_has_its_steady_tempo_and_how_far_the_bars_stray_from_it() throws IOException {
    TimingSheet sheet = sheet("{tempo: auto}");
    assertThat(sheet.tempo().sections())
        .extracting(section -> section.name() + " " + section.framesPerBeat())
        .startsWith(" 20-0", "A 20-0", "B 15-0", "C 15-0");
    TempoSection last = sheet.tempo().sections().get(sheet.tempo().sections().size() - 1);
    assertThat(last.mostDrift()).isLessThan(Seconds.of(-1));
    assertThat(sheet.bars())
        .filteredOn(bar -> bar.bar().number() >= last.first().bar().number())
        .extracting(FilmBar::drift)
        .contains(last.mostDrift())
        .contains(Seconds.ZERO);
  }

  /** Bar 67 alone is in 2/4, and the piece begins with a pickup of one beat. */
  @Test
  void every_bar_belongs_to_one_section() throws IOException {
    TimingSheet sheet = sheet("{tempo: auto}");
    List<FilmBar> covered = new ArrayList<>();
    for (TempoSection section : sheet.tempo().sections()) {
      int first = section.first().bar().index();
      covered.addAll(sheet.bars().subList(first, section.last().bar().index() + 1));
      assertThat(section.bars()).isPositive();
    }
    assertThat(covered).isEqualTo(sheet.bars());
    assertThat(sheet.tempo().sections())
        .extracting(section -> section.first().bar().number())
        .contains(0, 67, 68);
  }

  @Test
  void steady_tempos_nearby_with_more_bar_lines_on_photographs_are_advised() throws IOException {
    TimingSheet sheet = sheet("{tempo: written}");
    assertThat(sheet.tempo().sections())
        .allSatisfy(
            section ->
                assertThat(section.better())
                    .hasSizeLessThanOrEqualTo(3)
                    .allMatch(advice -> advice.barsOnGrid() > section.barsOnPhotographs())
                    .allMatch(advice -> advice.bars() == section.bars()));
    assertThat(sheet.tempo().sections()).anyMatch(section -> !section.better().isEmpty());
    assertThat(sheet.tempo().pins()).isEmpty();
    assertThat(sheet.tempo().shifts()).isEmpty();
  }

  @Test
  void pinned_bars_stand_exactly_on_their_seconds_and_cues_say_how_far_they_moved()
      throws IOException {
    TimingSheet sheet = sheet("{pins: [{bar: 1, at: 1.52 s}, {bar: 33, at: 89.04 s}]}");
    assertThat(sheet.tempo().pins())
        .hasSize(2)
        .allSatisfy(
            pin -> {
              assertThat(pin.residual()).isEqualTo(Seconds.ZERO);
              assertThat(pin.frame()).isEqualTo(sheet.clock().frameAt(pin.asked()));
            });
    // the third beat of bar 33 is written at 88.75 s, and with the pins it is at 90.30 s
    assertThat(sheet.tempo().shifts())
        .filteredOn(shift -> shift.cue().title().equals("glimmer 1"))
        .singleElement()
        .satisfies(
            shift -> {
              assertThat(shift.writtenFrame()).isEqualTo(2130);
              assertThat(shift.frames()).isEqualTo(37);
            });
    assertThat(sheet.tempo().sections()).allMatch(section -> section.better().isEmpty());
  }

  private TimingSheet sheet(String music) throws IOException {
    Path file = folder.resolve("quay.yaml");
    String score = Path.of("scores/lamplighters-quay.mid").toAbsolutePath().toString();
    Files.writeString(
        file,
        """
        title: Quay
        score: '%s'
        film: {frame-rate: 24}
        music: %s
        motifs:
          glimmer:
            heard-at: {place: bar 33, length: 5 beats, part: Clarinet}
            match: exact
        panels:
          - {panel: 1, action: Fog}
        """
            .formatted(score, music),
        UTF_8);
    Plan plan = PlanReader.read(file);
    Music followed =
        MusicFinder.follow(ScoreReader.read(plan.music().score()), plan.music().tempo());
    return TimingPlanner.plan(
        plan, followed, MotifSearch.of(plan, followed).occurrences(), Kept.NOTHING);
  }
}
