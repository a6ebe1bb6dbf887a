package org.barsheet.motif.match;

import java.util.Arrays;
import org.barsheet.notation.WrittenNote;

/**
 * Where the parts of a field rest around each note: a line that goes from part to part, note by
 * note or half by half, is one line if the part it leaves rests then and the part it comes to
 * rested before.
 */
final class PartRests {

  /** For music in one part. */
  static final PartRests NONE = new PartRests(new long[0], new long[0], new long[0]);

  private final long[] on;

  /** When the parts of a note were silent, before it. */
  private final long[] restedFrom;

  /** When a part of a note plays again, after it. */
  private final long[] restsTo;

  private PartRests(long[] on, long[] restedFrom, long[] restsTo) {
    this.on = on;
    this.restedFrom = restedFrom;
    this.restsTo = restsTo;
  }

  static PartRests of(NoteField field) {
    int parts = 1;
    for (int note = 0; note < field.size(); note++) {
      for (WrittenNote source : field.sources(note)) {
        parts = Math.max(parts, source.played().part() + 1);
      }
    }
    long[] on = new long[field.size()];
    Arrays.setAll(on, field::onTick);
    return new PartRests(on, restedFrom(field, parts), restsTo(field, parts));
  }

  private static long[] restedFrom(NoteField field, int parts) {
    long[] from = new long[field.size()];
    long[] silent = new long[parts];
    Arrays.fill(silent, Long.MIN_VALUE);
    for (int onset = 0; onset < field.onsets(); onset++) {
      int end = field.firstNoteAt(onset + 1);
      for (int note = field.firstNoteAt(onset); note < end; note++) {
        from[note] = Long.MIN_VALUE;
        for (WrittenNote source : field.sources(note)) {
          from[note] = Math.max(from[note], silent[source.played().part()]);
        }
      }
      for (int note = field.firstNoteAt(onset); note < end; note++) {
        long off = field.onTick(note) + field.shortestLength(note);
        for (WrittenNote source : field.sources(note)) {
          silent[source.played().part()] = Math.max(silent[source.played().part()], off);
        }
      }
    }
    return from;
  }

  private static long[] restsTo(NoteField field, int parts) {
    long[] to = new long[field.size()];
    long[] next = new long[parts];
    Arrays.fill(next, Long.MAX_VALUE);
    for (int onset = field.onsets() - 1; onset >= 0; onset--) {
      int end = field.firstNoteAt(onset + 1);
      for (int note = field.firstNoteAt(onset); note < end; note++) {
        to[note] = Long.MAX_VALUE;
        for (WrittenNote source : field.sources(note)) {
          to[note] = Math.min(to[note], next[source.played().part()]);
        }
      }
      for (int note = field.firstNoteAt(onset); note < end; note++) {
        for (WrittenNote source : field.sources(note)) {
          next[source.played().part()] = field.onTick(note);
        }
      }
    }
    return to;
  }

  /** Whether the parts of a later note take over from those of an earlier one. */
  boolean takesOver(int before, int note) {
    return restedFrom[note] <= on[before] && restsTo[before] > on[note];
  }
}
