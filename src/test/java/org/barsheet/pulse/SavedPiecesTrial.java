package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.barsheet.pulse.SavedPieces.Read;
import org.barsheet.pulse.SavedPieces.Saved;
import org.barsheet.score.Meter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Invented pieces of every meter, saved in every way; prints how they are read, those read wrongly
 * one by one with {@code -Dfigures.talk=true}.
 */
@Tag("trial")
class SavedPiecesTrial {

  private static final int PIECES = 20;
  private static final int BARS = 48;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2/4",
        "3/4",
        "4/4",
        "6/8",
        "9/8",
        "12/8",
        "5/4",
        "7/8",
        "4/4 3/4 6/8",
        "3/4 4/4 3/4"
      })
  void pieces_of_a_meter_are_mostly_right_or_asked_about(String meters) {
    List<Meter> sections = Arrays.stream(meters.split(" ")).map(SavedPieces::meter).toList();
    for (Saved saved : Saved.values()) {
      List<Read> reads = new ArrayList<>();
      for (long seed = 1; seed <= PIECES; seed++) {
        Random random = new Random(seed);
        double bpm = 60 + random.nextInt(90);
        double pickup = seed % 3 == 0 ? 1 : 0;
        ComposedPiece piece = new ComposedPiece(seed, pickup, sections, BARS / sections.size());
        reads.add(new SavedPieces(folder).read(piece, saved, bpm));
      }
      System.out.println(SavedPieces.row(meters + " " + saved, reads));
      if (Boolean.getBoolean("figures.talk")) {
        for (Read read : reads) {
          if (!read.isRight()) {
            System.out.printf(
                "    %.2f %.2f %s%n", read.beats(), read.bars(), read.music().sentence());
            read.music().doubts().forEach(doubt -> System.out.println("      " + doubt.sentence()));
          }
        }
      }
      assertThat(reads.stream().filter(read -> read.isRight() || read.asked()))
          .hasSizeGreaterThanOrEqualTo(leastRightOrAsked(saved));
      if (saved == Saved.RIGHTLY) {
        assertThat(reads).allMatch(read -> read.isRight() && !read.asked());
      }
    }
  }

  /** What they are now, so that they get no worse. */
  private static int leastRightOrAsked(Saved saved) {
    return switch (saved) {
      case RIGHTLY -> PIECES;
      case LATE -> 17;
      case WITHOUT_METER -> 15;
      case AT_ANOTHER_TEMPO, PLAYED_TO_A_CLICK -> 12;
    };
  }
}
