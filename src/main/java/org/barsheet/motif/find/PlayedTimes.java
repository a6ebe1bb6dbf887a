package org.barsheet.motif.find;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Pattern;
import org.barsheet.motif.match.Picks;
import org.barsheet.motif.match.PlayedChain;
import org.barsheet.score.TempoMap;

/**
 * When each note of a field sounds, in seconds of the file.
 *
 * <p>These are for telling whether a motif is there; where it is found is said in the notes' own
 * ticks.
 */
final class PlayedTimes {

  /** A step this many times as long or as short as the pace of its chain is told. */
  private static final double UNEVEN = 1.3;

  private final NoteField field;
  private final TempoMap tempo;
  private final double[] on;
  private final double[] length;

  PlayedTimes(NoteField field, TempoMap tempo) {
    this.field = field;
    this.tempo = tempo;
    this.on = new double[field.size()];
    this.length = new double[field.size()];
    for (int note = 0; note < on.length; note++) {
      long tick = field.onTick(note);
      boolean known = note > 0 && field.onTick(note - 1) == tick;
      on[note] = known ? on[note - 1] : tempo.secondsAt(tick).toDouble();
      length[note] = tempo.secondsAt(tick + field.length(note)).toDouble() - on[note];
    }
  }

  double at(int note) {
    return on[note];
  }

  double length(int note) {
    return length[note];
  }

  /** The first note at or after a time; the number of notes if there is none. */
  int firstFrom(double seconds) {
    int low = 0;
    int high = on.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (on[middle] < seconds) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * A pattern bent to how it was played: on the ticks of its notes, a missing note where the tempo
   * of its neighbor puts it.
   *
   * @param rate seconds a quarter note of the pattern lasts
   */
  Pattern played(Pattern pattern, Picks picks, double rate) {
    long[] onsets = new long[pattern.size()];
    long[] lengths = new long[pattern.size()];
    int neighbor = picks.firstPresent();
    for (int i = 0; i < onsets.length; i++) {
      neighbor = picks.has(i) ? i : neighbor;
      double time = on[picks.get(neighbor)];
      double onset = time + rate * quarters(pattern.onset(i) - pattern.onset(neighbor));
      onsets[i] = picks.has(i) ? field.onTick(picks.get(i)) : tick(onset);
      double off = onset + rate * quarters(pattern.length(i));
      lengths[i] = Math.max(1, tick(off) - onsets[i]);
    }
    return pattern.bent(onsets, lengths);
  }

  /** Where a chain leaves its own pace: "note 4 late, note 6 early"; empty if it does not. */
  String unevenness(PlayedChain played) {
    Picks picks = played.chain().notes();
    List<String> words = new ArrayList<>();
    int before = picks.firstPresent();
    for (int i = before + 1; i < picks.size(); i++) {
      if (picks.has(i)) {
        double asked =
            played.rate() * quarters(played.asked().onset(i) - played.asked().onset(before));
        double heard = on[picks.get(i)] - on[picks.get(before)];
        if (heard > UNEVEN * asked || UNEVEN * heard < asked) {
          words.add("note " + (i + 1) + (heard > asked ? " late" : " early"));
        }
        before = i;
      }
    }
    return String.join(", ", words);
  }

  private static double quarters(long patternTicks) {
    return patternTicks / (double) PlayedOccurrenceFinder.PATTERN_TICKS;
  }

  private long tick(double seconds) {
    BigDecimal time = new BigDecimal(seconds, MathContext.DECIMAL64);
    BigInteger micros = time.movePointRight(6).toBigInteger();
    BigFraction tick =
        tempo.tickAt(new Seconds(BigFraction.of(micros, BigInteger.valueOf(1_000_000))));
    return tick.getNumerator().divide(tick.getDenominator()).longValueExact();
  }
}
