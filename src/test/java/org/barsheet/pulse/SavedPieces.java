package org.barsheet.pulse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.barsheet.score.Meter;
import org.barsheet.score.MidiBytes.Track;
import org.barsheet.score.Score;

/** Invented pieces saved in the ways composers save theirs, and how they are read. */
final class SavedPieces {

  private static final double TOLERANCE = 0.07;
  private static final double RIGHT = 0.95;
  private static final int DEFAULT_TEMPO = 120;

  private final Path folder;

  SavedPieces(Path folder) {
    this.folder = folder;
  }

  /** A way to save a piece. */
  enum Saved {
    /** Right tempo and meter. */
    RIGHTLY,
    /** At its own tempo in a file left at 120. */
    AT_ANOTHER_TEMPO,
    /** The same with every note about 12 ms beside its time, after some silence. */
    PLAYED_TO_A_CLICK,
    /** Right tempo and meters, all notes 0.37 of a beat late. */
    LATE,
    /** Right tempo, no time signature. */
    WITHOUT_METER
  }

  /**
   * How a piece was read.
   *
   * @param beats F-measure of the beats
   * @param bars F-measure of the bars
   * @param asked whether something is asked
   */
  record Read(double beats, double bars, boolean asked, Music music) {
    boolean isRight() {
      return beats >= RIGHT && bars >= RIGHT;
    }
  }

  /** Saves a piece and reads it. */
  Read read(ComposedPiece piece, Saved saved, double beatsPerMinute) {
    double quarter = 60 / beatsPerMinute;
    double perQuarter = ComposedPiece.TICKS * (isUnset(saved) ? quarter / 0.5 : 1);
    double late = late(saved, perQuarter);
    DoubleUnaryOperator ticks = at -> at * perQuarter + late;
    double miss = saved == Saved.PLAYED_TO_A_CLICK ? 0.012 * ComposedPiece.TICKS / 0.5 : 0;
    Score score = piece.save(folder, heading(piece, saved, beatsPerMinute), ticks, miss);
    double perTick = isUnset(saved) ? 0.5 / ComposedPiece.TICKS : quarter / ComposedPiece.TICKS;
    Music music = MusicFinder.follow(score, TempoRequest.DEFAULT);
    return new Read(
        FMeasure.of(times(piece.beats(), ticks, perTick), times(music.beats()), TOLERANCE),
        FMeasure.of(
            times(piece.bars(), ticks, perTick),
            times(music.firstDownbeats(Integer.MAX_VALUE)),
            TOLERANCE),
        !music.doubts().isEmpty(),
        music);
  }

  private static boolean isUnset(Saved saved) {
    return saved == Saved.AT_ANOTHER_TEMPO || saved == Saved.PLAYED_TO_A_CLICK;
  }

  private static double late(Saved saved, double perQuarter) {
    return switch (saved) {
      case LATE -> Math.rint(0.37 * perQuarter);
      case PLAYED_TO_A_CLICK -> 1.37 * ComposedPiece.TICKS / 0.5;
      default -> 0;
    };
  }

  private static Track heading(ComposedPiece piece, Saved saved, double beatsPerMinute) {
    double bpm = isUnset(saved) ? DEFAULT_TEMPO : beatsPerMinute;
    Track track = new Track().tempo(0, (int) Math.round(60_000_000 / bpm));
    return saved == Saved.RIGHTLY || saved == Saved.LATE ? piece.signatures(track) : track;
  }

  private static List<Double> times(
      List<Double> quarters, DoubleUnaryOperator ticks, double perTick) {
    return quarters.stream().map(at -> ticks.applyAsDouble(at) * perTick).toList();
  }

  private static List<Double> times(List<Beat> beats) {
    return beats.stream().map(beat -> beat.seconds().toDouble()).toList();
  }

  /** A row of the table of figures. */
  static String row(String name, List<Read> reads) {
    List<Read> right = new ArrayList<>(reads);
    right.removeIf(read -> !read.isRight());
    List<Read> wrong = new ArrayList<>(reads);
    wrong.removeAll(right);
    return String.format(
        Locale.ROOT,
        "%-34s %3d pieces  beats %.3f  bars %.3f  right %3d (asked %3d)  wrong %3d (asked %3d)",
        name,
        reads.size(),
        reads.stream().mapToDouble(Read::beats).average().orElse(0),
        reads.stream().mapToDouble(Read::bars).average().orElse(0),
        right.size(),
        right.stream().filter(Read::asked).count(),
        wrong.size(),
        wrong.stream().filter(Read::asked).count());
  }

  static Meter meter(String text) {
    String[] parts = text.split("/", -1);
    return new Meter(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
  }
}
