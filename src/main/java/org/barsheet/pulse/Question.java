package org.barsheet.pulse;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.pulse.Doubt.Kind;
import org.barsheet.pulse.evidence.MeterPattern;
import org.barsheet.score.BarGrid;

/**
 * What else the music might be, as a question that a musician answers, with the line of the plan
 * that settles it. Of several only the nearest is asked.
 *
 * @param kind what is asked
 * @param margin how much better what is followed fits, 1 where nobody need be asked
 * @param sentence the question, what is followed, and what to write for the other
 */
record Question(Kind kind, double margin, String sentence) {

  /** The nearest question worth asking. */
  static Optional<Doubt> nearest(List<Question> questions, BarGrid bars) {
    return questions.stream()
        .filter(question -> question.margin < 1)
        .min(Comparator.comparingDouble(Question::margin))
        .map(one -> new Doubt(one.kind, bars.first(), bars.last(), one.sentence));
  }

  /** Whether the beat is longer or shorter. */
  static Question beat(double margin, double seconds, double otherSeconds) {
    String bpm = bpm(60 / seconds);
    String other = bpm(60 / otherSeconds);
    return new Question(
        Kind.BEAT_LEVEL,
        margin,
        "is the beat you hear "
            + bpm
            + " or "
            + other
            + " bpm? "
            + bpm
            + " is followed; for "
            + other
            + " write bpm: "
            + other
            + " under music");
  }

  /**
   * Whether bars begin on another beat.
   *
   * @param number the printed number of the bar that begins at one of the two times
   */
  static Question bar(double margin, int number, double seconds, double otherSeconds) {
    String at = String.format(Locale.ROOT, "%.2f s", seconds);
    String other = String.format(Locale.ROOT, "%.2f", otherSeconds);
    return new Question(
        Kind.BAR_PHASE,
        margin,
        "does bar "
            + number
            + " begin at "
            + at
            + " or "
            + other
            + " s? "
            + at
            + " is followed; for the other write pins: [{bar: "
            + number
            + ", at: "
            + other
            + " s}] under music");
  }

  /** Whether bars have another number of beats. */
  static Question size(double margin, MeterPattern meter, MeterPattern other) {
    return new Question(
        Kind.BAR_SIZE,
        margin,
        which(meter, other)
            + " "
            + meter.meter()
            + " is followed; for the other write meter: "
            + other.meter()
            + " under music");
  }

  private static String which(MeterPattern meter, MeterPattern other) {
    return beats(meter).equals(beats(other))
        ? "is the meter " + meter.meter() + " or " + other.meter() + "?"
        : "do bars have " + beats(meter) + " or " + beats(other) + " beats?";
  }

  private static String beats(MeterPattern meter) {
    return meter.meter().feltBeats() + (meter.isCompound() ? " dotted" : "");
  }

  /** With a decimal where there is one. */
  static String bpm(double beatsPerMinute) {
    double tenths = Math.rint(10 * beatsPerMinute) / 10;
    boolean whole = tenths == Math.rint(tenths);
    return String.format(Locale.ROOT, whole ? "%.0f" : "%.1f", tenths);
  }
}
