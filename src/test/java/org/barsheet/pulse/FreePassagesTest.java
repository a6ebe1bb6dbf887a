package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.score.Bar;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FreePassagesTest {

  private static final long BAR = 1920;
  private static final double FREE_BEAT = 397.3;

  @TempDir Path folder;

  /** Twenty-four strict bars of 4/4, sixteen in which beats last 397.3 ticks, sixteen strict. */
  private Score score() {
    Track track = new Track();
    addStrict(track, 0, 24);
    for (int eighth = 0; eighth * FREE_BEAT / 2 < 16 * BAR - 100; eighth++) {
      long missed = eighth == 0 ? 0 : (eighth * 7919L) % 13 - 6;
      addNotes(track, Math.round(24 * BAR + eighth * FREE_BEAT / 2) + missed, eighth);
    }
    addStrict(track, 40, 56);
    return Scores.read(MidiBytes.file().track(track), folder);
  }

  private static void addStrict(Track track, int fromBar, int toBar) {
    for (int eighth = 0; eighth < 8 * (toBar - fromBar); eighth++) {
      addNotes(track, fromBar * BAR + 240L * eighth, eighth);
    }
  }

  /** A new chord every bar: its root on the first beat, a third on the others, a tune above. */
  private static void addNotes(Track track, long tick, int eighth) {
    int root = new int[] {36, 41, 43, 45}[eighth / 8 % 4];
    int tune = root + 24 + new int[] {12, 16, 19, 16}[eighth % 4];
    int under = eighth % 8 == 0 ? root : root + 16;
    track.event(tick, 0x90, tune, 60);
    if (eighth % 2 == 0) {
      track.event(tick, 0x90, under, eighth % 8 == 0 ? 90 : 60).event(tick + 90, 0x80, under, 0);
    }
    track.event(tick + 90, 0x80, tune, 0);
  }

  @Test
  void bars_are_as_written_where_the_notes_keep_to_them_and_found_elsewhere() {
    Score score = score();
    Music music = MusicFinder.follow(score, TempoRequest.DEFAULT);
    assertThat(music.evidence().verdict()).isEqualTo(TempoEvidence.Verdict.MIXED);
    assertThat(music.source()).isEqualTo(Music.Source.WRITTEN);
    List<Bar> bars = music.bars().bars();
    assertThat(bars.subList(0, 24)).isEqualTo(score.bars().bars().subList(0, 24));
    List<Bar> free =
        bars.stream()
            .filter(bar -> bar.startTick() >= 24 * BAR && bar.endTick() < 40 * BAR)
            .toList();
    assertThat(free).hasSizeGreaterThanOrEqualTo(17);
    assertThat(free)
        .allSatisfy(
            bar ->
                assertThat((double) bar.lengthTicks()).isBetween(3.9 * FREE_BEAT, 4.1 * FREE_BEAT));
    assertThat(bars).extracting(Bar::startTick).contains(40 * BAR, 55 * BAR);
    for (int i = 1; i < bars.size(); i++) {
      assertThat(bars.get(i).startTick()).isEqualTo(bars.get(i - 1).endTick());
      assertThat(bars.get(i).number()).isEqualTo(bars.get(i - 1).number() + 1);
    }
  }

  @Test
  void the_bars_of_a_free_passage_are_named() {
    Music music = MusicFinder.follow(score(), TempoRequest.DEFAULT);
    assertThat(music.doubts())
        .filteredOn(doubt -> doubt.kind() == Doubt.Kind.PARTLY_UNTRUE)
        .singleElement()
        .extracting(Doubt::sentence)
        .asString()
        .startsWith("from bar 25 to bar ")
        .contains("taken from the playing");
  }
}
