package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.Track;
import org.barsheet.score.Bar;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Takes the time signatures out of written scores and counts, by the meter of their middle bar,
 * whose bars are found again (F-measure, 70 ms) and about which something is asked. The scores are
 * the MIDI files in folders called {@code score} or {@code motifs} below the folder named by the
 * system property {@code evaluation.folder}.
 */
@Tag("evaluate")
class UnsignedScoresEvaluation {

  private static final double TOLERANCE = 0.07;
  private static final double RIGHT = 0.95;
  private static final int TIME_SIGNATURE = 0x58;

  @TempDir private Path folder;

  private static final class Row {
    private int right;
    private int rightAsked;
    private int wrong;
    private int wrongAsked;

    private void add(boolean isRight, boolean asked) {
      right += isRight ? 1 : 0;
      rightAsked += isRight && asked ? 1 : 0;
      wrong += isRight ? 0 : 1;
      wrongAsked += !isRight && asked ? 1 : 0;
    }

    @Override
    public String toString() {
      return String.format(
          "right %3d (asked %3d)  wrong %3d (asked %3d)", right, rightAsked, wrong, wrongAsked);
    }
  }

  @Test
  void bars_of_scores_without_their_time_signatures() throws Exception {
    Map<String, Row> rows = new TreeMap<>();
    for (Path file : scores()) {
      Score truth = ScoreReader.read(file);
      if (truth.meterEvents() > 0) {
        Music music = MusicFinder.follow(unsigned(file), TempoRequest.DEFAULT);
        List<Bar> bars = truth.bars().bars();
        String meter = bars.get(bars.size() / 2).meter().toString();
        double found = FMeasure.of(starts(truth), starts(music), TOLERANCE);
        boolean asked = !music.doubts().isEmpty();
        rows.computeIfAbsent(meter, unseen -> new Row()).add(found >= RIGHT, asked);
        System.out.printf("%-6s %.3f %s %s%n", meter, found, file.getFileName(), music.sentence());
      }
    }
    rows.forEach((meter, row) -> System.out.printf("%-6s %s%n", meter, row));
    assertThat(rows).isNotEmpty();
  }

  private static List<Path> scores() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(System.getProperty("evaluation.folder", "")))) {
      return files
          .filter(file -> file.toString().matches(".*/(score|motifs)/.*\\.mid"))
          .sorted()
          .toList();
    }
  }

  private Score unsigned(Path file) throws IOException, InvalidMidiDataException {
    Sequence sequence = MidiSystem.getSequence(file.toFile());
    for (Track track : sequence.getTracks()) {
      for (int i = track.size() - 1; i >= 0; i--) {
        if (track.get(i).getMessage() instanceof MetaMessage meta
            && meta.getType() == TIME_SIGNATURE) {
          track.remove(track.get(i));
        }
      }
    }
    Path copy = folder.resolve("unsigned.mid");
    MidiSystem.write(sequence, 1, copy.toFile());
    return ScoreReader.read(copy);
  }

  private static List<Double> starts(Score score) {
    return score.bars().bars().stream()
        .map(bar -> score.tempo().secondsAt(bar.startTick()).toDouble())
        .toList();
  }

  private static List<Double> starts(Music music) {
    return music.firstDownbeats(Integer.MAX_VALUE).stream()
        .map(beat -> beat.seconds().toDouble())
        .toList();
  }
}
