package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A thousand invented pieces, played with tempo curves of their own. */
@Tag("trial")
class RetimedPiecesTrial {

  private static final double TOLERANCE = 0.07;
  private static final int PIECES = 167;

  @TempDir private Path folder;

  /**
   * Least mean F-measures of beats and downbeats, by how far the tempo strays; measured 0.99 each.
   */
  @ParameterizedTest
  @CsvSource({
    "3, 0.03, 0.005, 0.98, 0.98", "4, 0.03, 0.005, 0.98, 0.98",
    "3, 0.08, 0.010, 0.98, 0.98", "4, 0.08, 0.010, 0.98, 0.98",
    "3, 0.15, 0.015, 0.98, 0.98", "4, 0.15, 0.015, 0.98, 0.98"
  })
  void pieces_played_freely_are_recovered(
      int beatsInBar, double spread, double miss, double leastBeats, double leastDownbeats) {
    List<Double> beats = new ArrayList<>();
    List<Double> downbeats = new ArrayList<>();
    for (long seed = 1; seed <= PIECES; seed++) {
      double beatSeconds = 0.45 + 0.001 * seed;
      PlayedPiece piece = new PlayedPiece(beatsInBar, 24, beatSeconds, spread, miss, seed);
      Music music = MusicFinder.follow(piece.record(folder), TempoRequest.DEFAULT);
      beats.add(FMeasure.of(piece.beats(), times(music.beats()), TOLERANCE));
      List<Beat> first = music.firstDownbeats(Integer.MAX_VALUE);
      downbeats.add(FMeasure.of(piece.downbeats(), times(first), TOLERANCE));
    }
    assertThat(mean(beats)).isGreaterThan(leastBeats);
    assertThat(mean(downbeats)).isGreaterThan(leastDownbeats);
  }

  private static List<Double> times(List<Beat> beats) {
    return beats.stream().map(beat -> beat.seconds().toDouble()).toList();
  }

  private static double mean(List<Double> figures) {
    return figures.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
