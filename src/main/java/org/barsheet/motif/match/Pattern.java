package org.barsheet.motif.match;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.Form;
import org.barsheet.motif.MotifNote;

/**
 * A shape of a motif under one transform, on the ticks of a score.
 *
 * <p>Onsets count from the first note. A fraction of a tick (a triplet on ticks that three does not
 * divide) is rounded to the nearest tick; the matcher's tolerance covers it.
 */
public final class Pattern {

  private static final int SHORTEST_HEAD = 4;

  /** Onsets may lie off by 1/24 of a quarter note, in fast patterns by less. */
  private static final int ONSET_TOLERANCE = 24;

  private final Transform transform;
  private final Optional<Form> variant;
  private final long[] onsets;
  private final long[] lengths;
  private final int[] pitches;

  private Pattern(
      Transform transform, Optional<Form> variant, long[] onsets, long[] lengths, int[] pitches) {
    this.transform = transform;
    this.variant = variant;
    this.onsets = onsets;
    this.lengths = lengths;
    this.pitches = pitches;
  }

  public static Pattern of(List<MotifNote> shape, Transform transform, int ticksPerQuarter) {
    List<MotifNote> line = transform.retrograde() ? reversed(shape) : shape;
    BigFraction ticks = transform.stretch().multiply(ticksPerQuarter);
    int size = line.size();
    long[] onsets = new long[size];
    long[] lengths = new long[size];
    int[] pitches = new int[size];
    int axis = line.get(0).pitch();
    for (int i = 0; i < size; i++) {
      MotifNote note = line.get(i);
      onsets[i] = nearest(note.onset().subtract(line.get(0).onset()).multiply(ticks));
      lengths[i] = Math.max(1, nearest(note.length().multiply(ticks)));
      pitches[i] = transform.inverted() ? 2 * axis - note.pitch() : note.pitch();
    }
    return new Pattern(transform, Optional.empty(), onsets, lengths, pitches);
  }

  /**
   * The same notes at other times.
   *
   * @param ticks onset of each note on some ticks of their own
   */
  public Pattern bent(long[] ticks, long[] newLengths) {
    long[] fromFirst = new long[ticks.length];
    for (int i = 0; i < ticks.length; i++) {
      fromFirst[i] = ticks[i] - ticks[0];
    }
    return new Pattern(transform, variant, fromFirst, newLengths.clone(), pitches);
  }

  /** The same notes under another name. */
  public Pattern as(Transform other) {
    return new Pattern(other, variant, onsets, lengths, pitches);
  }

  /** The first half, four notes at least; empty if that is all of it. */
  public Optional<Pattern> head() {
    int notes = Math.max(SHORTEST_HEAD, (size() + 1) / 2);
    if (notes >= size()) {
      return Optional.empty();
    }
    return Optional.of(
        new Pattern(
            transform,
            Optional.of(Form.SHORTENED),
            Arrays.copyOf(onsets, notes),
            Arrays.copyOf(lengths, notes),
            Arrays.copyOf(pitches, notes)));
  }

  /** The same notes, sought under ornaments. */
  public Pattern ornamented() {
    return new Pattern(transform, Optional.of(Form.ORNAMENTED), onsets, lengths, pitches);
  }

  /** Ornamented or shortened; empty for the whole motif plainly played. */
  public Optional<Form> variant() {
    return variant;
  }

  private static List<MotifNote> reversed(List<MotifNote> shape) {
    BigFraction end = BigFraction.ZERO;
    for (MotifNote note : shape) {
      BigFraction off = note.onset().add(note.length());
      end = off.compareTo(end) > 0 ? off : end;
    }
    List<MotifNote> reversed = new ArrayList<>();
    for (MotifNote note : shape) {
      BigFraction onset = end.subtract(note.onset().add(note.length()));
      reversed.add(new MotifNote(onset, note.length(), note.pitch()));
    }
    Collections.reverse(reversed);
    return reversed;
  }

  private static long nearest(BigFraction ticks) {
    BigFraction doubled = ticks.multiply(2).add(1);
    BigInteger half = doubled.getDenominator().multiply(BigInteger.TWO);
    return doubled.getNumerator().divide(half).longValueExact();
  }

  public Transform transform() {
    return transform;
  }

  public int size() {
    return onsets.length;
  }

  public long onset(int i) {
    return onsets[i];
  }

  public long length(int i) {
    return lengths[i];
  }

  public int pitch(int i) {
    return pitches[i];
  }

  /** Semitones from one note to another. */
  public int interval(int from, int to) {
    return pitches[to] - pitches[from];
  }

  /** What losing a note costs, in thousandths: the first and last note are often changed. */
  public int weight(int i) {
    return i == 0 || i == onsets.length - 1 ? 500 : 1000;
  }

  /** All weights together. */
  public int weight() {
    return 1000 * (onsets.length - 1);
  }

  /** The least time between two onsets, in ticks. */
  long shortestStep() {
    long least = Long.MAX_VALUE;
    for (int i = 1; i < onsets.length; i++) {
      if (onsets[i] > onsets[i - 1]) {
        least = Math.min(least, onsets[i] - onsets[i - 1]);
      }
    }
    return least;
  }

  /** How many ticks an onset may lie off without being early or late. */
  public long tolerance(int ticksPerQuarter) {
    return Math.max(1, Math.min(ticksPerQuarter / ONSET_TOLERANCE, shortestStep() / 4));
  }

  /** Whether another pattern begins with this one, but for how long its last note is held. */
  public boolean begins(Pattern other) {
    int last = size() - 1;
    return size() <= other.size()
        && Arrays.equals(onsets, 0, size(), other.onsets, 0, size())
        && Arrays.equals(pitches, 0, size(), other.pitches, 0, size())
        && Arrays.equals(lengths, 0, last, other.lengths, 0, last);
  }

  public long end() {
    int last = onsets.length - 1;
    return onsets[last] + lengths[last];
  }
}
