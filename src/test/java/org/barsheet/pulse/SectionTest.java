package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SectionTest {

  @TempDir Path folder;

  /** Four bars at 120, a mark, two bars at 120 and two at 60. */
  private Music music() {
    Track track = new Track().tempo(0, 500_000).text(4 * 1920, 6, "Quay");
    track.tempo(6 * 1920, 1_000_000);
    return MusicFinder.follow(Scores.read(Scores.quarters(8, track), folder), TempoRequest.DEFAULT);
  }

  @Test
  void sections_begin_at_marks_and_last_as_long_at_a_steady_beat() {
    List<Section> sections = Section.of(music());
    assertThat(sections).extracting(Section::name).containsExactly("", "Quay");
    assertThat(sections.get(0).steadyBeat()).isEqualTo(Seconds.of(1, 2));
    assertThat(sections.get(1).first().number()).isEqualTo(5);
    assertThat(sections.get(1).last().number()).isEqualTo(8);
    assertThat(sections.get(1).steadyBeat()).isEqualTo(Seconds.of(3, 4));
  }

  @Test
  void bars_run_ahead_of_the_steady_tempo_before_it_slows_down() {
    Music music = music();
    Section section = Section.of(music).get(1);
    List<Bar> bars = music.bars().bars();
    assertThat(section.drift(music, bars.get(4))).isEqualTo(Seconds.ZERO);
    assertThat(section.drift(music, bars.get(5))).isEqualTo(Seconds.of(-1));
    assertThat(section.drift(music, bars.get(6))).isEqualTo(Seconds.of(-2));
    assertThat(section.drift(music, bars.get(7))).isEqualTo(Seconds.of(-1));
  }

  @Test
  void a_change_of_meter_begins_a_section() {
    Track meters = new Track().meter(0, 4, 2).meter(2 * 1920, 2, 2);
    Music music =
        MusicFinder.follow(Scores.read(Scores.quarters(4, meters), folder), TempoRequest.DEFAULT);
    assertThat(Section.of(music))
        .extracting(section -> section.first().number())
        .containsExactly(1, 3);
  }
}
