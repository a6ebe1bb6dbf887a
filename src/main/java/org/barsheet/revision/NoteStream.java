package org.barsheet.revision;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The notes of a whole score at their times, whoever plays them and whatever bars they stand in.
 */
final class NoteStream {

  private final long[] notes;

  private NoteStream(long[] notes) {
    this.notes = notes;
  }

  static NoteStream of(ScoreNotes score) {
    LongStream all =
        IntStream.range(0, score.bars().size())
            .boxed()
            .flatMapToLong(
                bar -> Arrays.stream(BarContent.notes(score, bar, score.bars().get(bar).start())));
    return new NoteStream(all.sorted().distinct().toArray());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NoteStream stream && Arrays.equals(stream.notes, notes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(notes);
  }
}
