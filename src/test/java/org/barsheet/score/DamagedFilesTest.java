package org.barsheet.score;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.barsheet.input.InputException;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two thousand seeded damages to a small file: each is read, or refused in words. */
class DamagedFilesTest {

  private static final int TRIALS = 2_000;

  @TempDir Path folder;

  @Test
  void damage_is_read_with_a_note_or_refused_and_never_anything_else() {
    byte[] whole = smallFile();
    SplittableRandom random = new SplittableRandom(20);
    int read = 0;
    int refused = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      byte[] damaged = damage(whole, random);
      try {
        Score score = ScoreReader.read(MidiBytes.write(folder, damaged));
        assertThat(score.notes().size()).isLessThan(damaged.length);
        assertThat(score.bars().bars()).isNotEmpty();
        read++;
      } catch (InputException inWords) {
        assertThat(inWords.problems()).allMatch(problem -> problem.file().contains("case.mid"));
        refused++;
      }
    }
    assertThat(read).isGreaterThan(TRIALS / 4);
    assertThat(refused).isPositive();
  }

  @Test
  void a_track_header_without_a_length_at_the_end_of_the_file_is_left_out() {
    byte[] file = MidiBytes.file().track(Track.scale(480)).raw("MTrk".getBytes(US_ASCII)).bytes();
    Score score = ScoreReader.read(MidiBytes.write(folder, file));
    assertThat(score.notes()).hasSize(8);
    assertThat(score.readingNotes())
        .extracting(ReadingNote::sentence)
        .containsExactly("4 stray bytes are left out");
  }

  private static byte[] smallFile() {
    Track tempos = new Track().text(0, 3, "Quay").tempo(0, 480_000).meter(0, 3, 2);
    tempos.tempo(960, 520_000).text(1440, 6, "A").meter(1440, 4, 2);
    Track sysex = Track.scale(480).event(4000, 0xF0, 3, 1, 2, 0xF7).event(4000, 0xE0, 0, 64);
    return MidiBytes.file().track(tempos).track(Track.scale(480)).track(sysex).bytes();
  }

  private static byte[] damage(byte[] whole, SplittableRandom random) {
    byte[] damaged = whole.clone();
    int changes = 1 + random.nextInt(4);
    for (int change = 0; change < changes; change++) {
      damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
    }
    return random.nextInt(4) == 0
        ? Arrays.copyOf(damaged, random.nextInt(damaged.length) + 1)
        : damaged;
  }
}
