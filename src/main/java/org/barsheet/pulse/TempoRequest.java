package org.barsheet.pulse;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Meter;

/**
 * What is asked about tempo and bars.
 *
 * @param tempo trust the file, the playing, or whichever the evidence favours
 * @param firstBar printed number of the first full bar
 * @param pickup whether the first bar is a pickup
 * @param playedOrder printed bar numbers in the order played, "1-16, 9-15", where repeats are
 *     written out in the file and panels quote a printed score
 * @param pins bars that begin at known times
 * @param meter a meter to expect in playing
 * @param beatsPerMinute felt bpm to expect in playing
 * @param feltBeat length of the felt beat in quarter notes, where it is not the meter's own
 */
public record TempoRequest(
    Mode tempo,
    int firstBar,
    Pickup pickup,
    Optional<String> playedOrder,
    List<Pin> pins,
    Optional<Meter> meter,
    Optional<BigFraction> beatsPerMinute,
    Optional<BigFraction> feltBeat) {

  public static final TempoRequest DEFAULT =
      new TempoRequest(
          Mode.AUTO,
          1,
          Pickup.AUTO,
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  public TempoRequest {
    pins = List.copyOf(pins);
  }

  /** The same, trusting another. */
  public TempoRequest withTempo(Mode other) {
    return new TempoRequest(
        other, firstBar, pickup, playedOrder, pins, meter, beatsPerMinute, feltBeat);
  }

  /** The same with these pins alone. */
  public TempoRequest withPins(List<Pin> others) {
    return new TempoRequest(
        tempo, firstBar, pickup, playedOrder, others, meter, beatsPerMinute, feltBeat);
  }

  /** The same, expecting another tempo in playing. */
  public TempoRequest withBeatsPerMinute(BigFraction other) {
    return new TempoRequest(
        tempo, firstBar, pickup, playedOrder, pins, meter, Optional.of(other), feltBeat);
  }

  /** Whom to trust for the tempo. */
  public enum Mode {
    AUTO,
    WRITTEN,
    PLAYED
  }

  /** Whether the piece begins with a pickup. */
  public enum Pickup {
    AUTO,
    YES,
    NO
  }

  /**
   * A bar that begins at a known time.
   *
   * @param bar printed bar number
   * @param at seconds from the recording's (or file's) first sample
   */
  public record Pin(int bar, Seconds at) {}
}
