package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.motif.HeardLine;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.notation.WrittenMusic;
import org.barsheet.notation.WrittenNote;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;

/** Takes a motif from where it is heard in the score. */
public final class MotifHearing {

  private static final int MOST_LINES_SHOWN = 4;
  private static final int FEWEST_NOTES = 4;

  private final Score score;
  private final WrittenMusic written;

  private MotifHearing(Score score) {
    this.score = score;
    this.written = WrittenMusic.of(score);
  }

  /** An ear that reads the score once for any number of motifs. */
  public static MotifHearing of(Score score) {
    return new MotifHearing(score);
  }

  /**
   * The line that one part plays, as it would be written: a note counts where it was meant, though
   * it is played a little early or late.
   *
   * @param fromTick first tick that counts
   * @param toTick first tick that no longer counts; a note begun before it is heard to its end
   * @throws InputException with a problem that has no file or position yet: the part is drums,
   *     rests there, or sounds two notes at once; the excerpt shows what was heard
   */
  public List<MotifNote> hear(Part part, long fromTick, long toTick) {
    if (part.drums()) {
      throw refused(
          part.name() + " is a drum part: it plays no pitches",
          "name a part with pitches",
          List.of());
    }
    List<Note> heard = begunIn(part, fromTick, toTick);
    if (heard.isEmpty()) {
      throw refused(
          part.name() + " doesn't begin a note there", others(fromTick, toTick), List.of());
    }
    HeardLine line = new HeardLine(heard, score.ticksPerQuarter());
    if (!line.isSingle()) {
      throw refused(
          part.name() + " plays more than one note at once there",
          "for its top line write notes: \"" + Notes.print(line.notes()) + "\"",
          layers(line, score.ticksPerQuarter()));
    }
    return line.notes();
  }

  /**
   * Why a line is too plain to be looked for at all, without file or position; empty if it is not.
   * Fewer than four notes of one length are found everywhere.
   */
  public static Optional<Problem> refusal(List<MotifNote> notes) {
    long lengths = notes.stream().map(MotifNote::length).distinct().count();
    if (notes.size() >= FEWEST_NOTES || lengths >= 2) {
      return Optional.empty();
    }
    String what = notes.size() == 1 ? "one note" : notes.size() + " notes of one length";
    return Optional.of(
        Problem.at(
            "",
            "",
            "a motif of " + what + " turns up everywhere by chance",
            "give at least four notes, or notes of two lengths"));
  }

  private List<Note> begunIn(Part part, long fromTick, long toTick) {
    long from = written.written(fromTick);
    long to = written.written(toTick);
    return written.notes().stream()
        .map(WrittenNote::written)
        .filter(note -> note.part() == part.index())
        .filter(note -> note.onTick() >= from && note.onTick() < to)
        .toList();
  }

  /** The remedy where a part rests: who does play, and what. */
  private String others(long from, long to) {
    List<String> playing = new ArrayList<>();
    for (Part part : score.parts()) {
      List<Note> heard = part.drums() ? List.of() : begunIn(part, from, to);
      if (!heard.isEmpty() && playing.size() < MOST_LINES_SHOWN) {
        HeardLine line = new HeardLine(heard, score.ticksPerQuarter());
        playing.add(part.name() + " plays " + Notes.print(line.notes()));
      }
    }
    return playing.isEmpty()
        ? "no part begins a note there: quote another place"
        : String.join("; ", playing);
  }

  /** The top line, the line under it and so on, as they can be written. */
  private static List<String> layers(HeardLine top, int ticksPerQuarter) {
    List<String> lines = new ArrayList<>();
    HeardLine line = top;
    while (true) {
      lines.add((lines.isEmpty() ? "top line: " : "under it: ") + Notes.print(line.notes()));
      if (line.isSingle() || lines.size() == MOST_LINES_SHOWN) {
        return lines;
      }
      line = new HeardLine(line.rest(), ticksPerQuarter);
    }
  }

  private static InputException refused(String sentence, String remedy, List<String> heard) {
    return new InputException(new Problem("", "", sentence, remedy, heard));
  }
}
