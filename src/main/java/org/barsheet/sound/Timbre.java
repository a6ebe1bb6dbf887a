package org.barsheet.sound;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.barsheet.score.Part;

/**
 * The sound of a family of instruments: a body and an edge, two sets of partials with envelopes of
 * their own.
 *
 * @param name unique among timbres
 * @param body strengths of the body's partials, the fundamental first
 * @param edge the same of the edge
 * @param edgeRatio pitch of the edge against the body's
 * @param attack seconds to full strength
 * @param decay seconds in which the body falls to 1/e at C4; 0 where it sustains
 * @param edgeDecay the same of the edge
 * @param release seconds in which both fall to 1/e after the note's end
 */
record Timbre(
    String name,
    List<Double> body,
    List<Double> edge,
    double edgeRatio,
    double attack,
    double decay,
    double edgeDecay,
    double release) {

  private static final Timbre PIANO =
      new Timbre("piano", falling(12, 1.7), falling(16, 1.0), 1, 0.003, 1.6, 0.35, 0.15);
  private static final Timbre BELL =
      new Timbre("bell", falling(1, 1), falling(2, 2), 4, 0.002, 1.1, 0.22, 0.35);
  private static final Timbre ORGAN =
      new Timbre("organ", drawbars(), falling(3, 1), cents(2), 0.015, 0, 0.08, 0.08);
  private static final Timbre PLUCK =
      new Timbre("pluck", falling(10, 1.4), falling(16, 0.8), 1, 0.002, 0.7, 0.12, 0.2);
  private static final Timbre BASS =
      new Timbre("bass", falling(8, 1.9), falling(10, 1.1), 1, 0.004, 2.2, 0.2, 0.1);
  private static final Timbre STRINGS =
      new Timbre("strings", falling(14, 1.3), falling(14, 1.2), cents(7), 0.06, 0, 0, 0.16);
  private static final Timbre VOICES =
      new Timbre("voices", falling(6, 1.9), falling(8, 1.5), cents(9), 0.09, 0, 0, 0.2);
  private static final Timbre BRASS =
      new Timbre("brass", falling(14, 1.1), falling(14, 0.7), 1, 0.03, 0, 0.25, 0.1);
  private static final Timbre REED =
      new Timbre("reed", odd(13, 1.1), falling(12, 1.0), 1, 0.025, 0, 0.15, 0.08);
  private static final Timbre PIPE =
      new Timbre("pipe", falling(5, 2.2), falling(3, 1.5), cents(4), 0.045, 0, 0.1, 0.1);
  private static final Timbre PAD =
      new Timbre("pad", falling(8, 1.6), falling(8, 1.4), cents(10), 0.2, 0, 0, 0.4);

  /** Every note begins at once and dies away. */
  static final Timbre STRUCK = PIANO;

  /** One for each family of General MIDI programs, eight programs to a family. */
  private static final List<Timbre> FAMILIES =
      List.of(
          PIANO, BELL, ORGAN, PLUCK, BASS, STRINGS, STRINGS, BRASS, REED, PIPE, ORGAN, PAD, PAD,
          PLUCK, BELL, PAD);

  private static final int PROGRAMS_IN_FAMILY = 8;
  private static final int PIZZICATO = 45;
  private static final int HARP = 46;
  private static final int TIMPANI = 47;
  private static final int FIRST_VOICE = 52;
  private static final int LAST_VOICE = 54;
  private static final int C4 = 60;
  private static final double OCTAVE_UP_DECAY = 0.7;

  Timbre {
    body = List.copyOf(body);
    edge = List.copyOf(edge);
  }

  /** The timbre of a part by its General MIDI family; a piano where the file names none. */
  static Timbre of(Part part) {
    int program = Programs.of(part);
    if (program == PIZZICATO || program == HARP) {
      return PLUCK;
    }
    if (program >= FIRST_VOICE && program <= LAST_VOICE) {
      return VOICES;
    }
    return program == TIMPANI ? BASS : FAMILIES.get(program / PROGRAMS_IN_FAMILY);
  }

  private static List<Double> partials(int count, IntToDoubleFunction strength) {
    return IntStream.rangeClosed(1, count).mapToObj(strength::applyAsDouble).toList();
  }

  private static List<Double> falling(int count, double steepness) {
    return partials(count, k -> StrictMath.pow(k, -steepness));
  }

  private static List<Double> odd(int count, double steepness) {
    return partials(count, k -> StrictMath.pow(k, -steepness) * (k % 2 == 1 ? 1 : 0.15));
  }

  private static List<Double> drawbars() {
    return List.of(1.0, 0.7, 0.4, 0.35, 0.0, 0.2, 0.0, 0.15);
  }

  /** A pitch a little above another, for a sound of many players. */
  private static double cents(double above) {
    return StrictMath.pow(2, above / 1200);
  }

  /** Decay of the body at a MIDI key: an octave up a note dies away in 0.7 of the time. */
  double decay(int pitch) {
    return decay * shorter(pitch);
  }

  /** Decay of the edge at a MIDI key. */
  double edgeDecay(int pitch) {
    return edgeDecay * shorter(pitch);
  }

  private static double shorter(int pitch) {
    return StrictMath.pow(OCTAVE_UP_DECAY, (pitch - C4) / 12.0);
  }
}
