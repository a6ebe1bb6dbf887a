package org.barsheet.motif;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A line in steps of a scale on a grid of sixteenths, and the ways a composer changes it; written
 * apart from the finder's own transforms.
 *
 * @param notes in order of onset
 */
record ComposedMotif(List<Tone> notes) {

  private static final int[] MAJOR = {0, 2, 4, 5, 7, 9, 11};
  private static final int[] MINOR = {0, 2, 3, 5, 7, 8, 10};

  /**
   * A note.
   *
   * @param on sixteenths from the first note
   * @param length in sixteenths
   * @param step of the scale from the key note of the middle octave
   * @param bend semitones added to that
   */
  record Tone(double on, double length, int step, int bend) {

    Tone at(double newOn, double newLength) {
      return new Tone(newOn, newLength, step, bend);
    }

    Tone moved(int steps, int semitones) {
      return new Tone(on, length, step + steps, bend + semitones);
    }

    int pitch(int key, boolean minor) {
      int[] scale = minor ? MINOR : MAJOR;
      return 60 + key + scale[Math.floorMod(step, 7)] + 12 * Math.floorDiv(step, 7) + bend;
    }
  }

  ComposedMotif {
    notes = List.copyOf(notes);
  }

  /** A motif of some notes, of at least two lengths and as many pitches. */
  static ComposedMotif compose(SplittableRandom random, int size, int[] lengths) {
    List<Tone> notes = new ArrayList<>();
    double on = 0;
    int step = random.nextInt(0, 7);
    for (int i = 0; i < size; i++) {
      int length = lengths[random.nextInt(lengths.length)];
      length =
          i == size - 1
              ? Math.max(length, 4)
              : i == 1 && size > 1 && length == notes.get(0).length() ? length * 2 : length;
      notes.add(new Tone(on, length, step, 0));
      on += length;
      int leap = random.nextInt(4) == 0 ? random.nextInt(2, 5) : random.nextInt(1, 3);
      boolean up = step <= -3 || (step < 10 && random.nextBoolean());
      step += up ? leap : -leap;
    }
    return new ComposedMotif(notes);
  }

  double length() {
    Tone last = notes.get(notes.size() - 1);
    return last.on() + last.length();
  }

  int size() {
    return notes.size();
  }

  ComposedMotif moved(int steps, int semitones) {
    return new ComposedMotif(notes.stream().map(note -> note.moved(steps, semitones)).toList());
  }

  ComposedMotif inverted() {
    int axis = notes.get(0).step();
    return new ComposedMotif(
        notes.stream().map(note -> note.moved(2 * (axis - note.step()), 0)).toList());
  }

  ComposedMotif retrograde() {
    List<Tone> turned = new ArrayList<>();
    for (int i = size() - 1; i >= 0; i--) {
      Tone note = notes.get(i);
      turned.add(note.at(length() - note.on() - note.length(), note.length()));
    }
    return new ComposedMotif(turned);
  }

  ComposedMotif stretched(double factor) {
    return new ComposedMotif(
        notes.stream().map(note -> note.at(factor * note.on(), factor * note.length())).toList());
  }

  /** Some notes on other steps. */
  ComposedMotif stepped(IntUnaryOperator stepsByIndex) {
    List<Tone> changed = new ArrayList<>();
    for (int i = 0; i < size(); i++) {
      changed.add(notes.get(i).moved(stepsByIndex.applyAsInt(i), 0));
    }
    return new ComposedMotif(changed);
  }

  ComposedMotif without(int index) {
    List<Tone> fewer = new ArrayList<>(notes);
    fewer.remove(index);
    return new ComposedMotif(fewer);
  }

  /** One note in place of another. */
  ComposedMotif with(int index, Tone... others) {
    List<Tone> changed = new ArrayList<>(notes.subList(0, index));
    changed.addAll(List.of(others));
    changed.addAll(notes.subList(index + 1, size()));
    return new ComposedMotif(changed);
  }

  /** The index of the longest note but the last. */
  int longest() {
    int best = 0;
    for (int i = 1; i < size() - 1; i++) {
      best = notes.get(i).length() > notes.get(best).length() ? i : best;
    }
    return best;
  }

  /** The longest note as a trill with the step above, from the note itself. */
  ComposedMotif trilled() {
    int index = longest();
    Tone note = notes.get(index);
    int strokes = (int) Math.max(4, 2 * Math.round(note.length()));
    Tone[] trill = new Tone[strokes];
    for (int i = 0; i < strokes; i++) {
      trill[i] =
          note.moved(i % 2, 0).at(note.on() + note.length() * i / strokes, note.length() / strokes);
    }
    return with(index, trill);
  }

  /** The longest note with a turn about it at its end. */
  ComposedMotif turned() {
    int index = longest();
    Tone note = notes.get(index);
    double fourth = note.length() / 8;
    double on = note.on() + note.length() / 2;
    return with(
        index,
        note.at(note.on(), note.length() / 2),
        note.moved(1, 0).at(on, fourth),
        note.at(on + fourth, fourth),
        note.moved(-1, 0).at(on + 2 * fourth, fourth),
        note.at(on + 3 * fourth, fourth));
  }

  /** The longest note halved by a passing note toward the next. */
  ComposedMotif passing() {
    int index = longest();
    Tone note = notes.get(index);
    int toward = notes.get(index + 1).step() > note.step() ? 1 : -1;
    double half = note.length() / 2;
    return with(index, note.at(note.on(), half), note.moved(toward, 0).at(note.on() + half, half));
  }

  /** As a plan has it. */
  List<MotifNote> line(int key, boolean minor) {
    return notes.stream()
        .map(
            note ->
                new MotifNote(
                    BigFraction.from(note.on() / 4, 1e-9, 1000),
                    BigFraction.from(note.length() / 4, 1e-9, 1000),
                    note.pitch(key, minor)))
        .toList();
  }
}
