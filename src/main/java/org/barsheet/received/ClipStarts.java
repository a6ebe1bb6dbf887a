package org.barsheet.received;

import java.math.BigInteger;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Performer;
import org.barsheet.timing.TimingSheet;

/**
 * When a clip begins, by all that says so; each in the film, from film frame 0.
 *
 * @param told by its start or its clap in the plan
 * @param heard by its sound, where that is found
 * @param labeled by its own timecode, where that is a time of this film: recorders without the
 *     film's timecode write the time of day
 */
public record ClipStarts(
    Optional<Seconds> told, Optional<Seconds> heard, Optional<Seconds> labeled) {

  /** What there is to say of a clip that has come; nothing for any other. */
  public static ClipStarts of(ReceivedClip clip, TimingSheet timing) {
    Seconds musicStart = musicStart(timing);
    return new ClipStarts(
        told(clip).map(musicStart::plus),
        clip.heard().filter(HeardPlace::isFound).map(place -> musicStart.plus(place.start())),
        clip.facts().flatMap(facts -> labeled(facts, timing)));
  }

  private static Seconds musicStart(TimingSheet timing) {
    return timing.clock().rate().startOf(timing.clock().musicStartFrame());
  }

  /** From the music's start; a clap on a later frame needs the clip's rate too. */
  private static Optional<Seconds> told(ReceivedClip clip) {
    return clip.performer().tie().flatMap(tie -> beforeTie(clip, tie).map(tie.at()::minus));
  }

  private static Optional<Seconds> beforeTie(ReceivedClip clip, Performer.Clap tie) {
    return tie.clipFrame() == 0
        ? Optional.of(Seconds.ZERO)
        : clip.asReceived().clipRate().map(rate -> rate.startOf(tie.clipFrame()));
  }

  private static Optional<Seconds> labeled(ClipFacts facts, TimingSheet timing) {
    Seconds end = timing.clock().rate().startOf(timing.lengthFrames());
    return facts
        .sinceMidnight()
        .map(since -> sinceFilmFrame0(since, timing))
        .filter(start -> start.plus(facts.length()).signum() > 0 && start.compareTo(end) < 0);
  }

  /** Within half a day of film frame 0, before it or after it. */
  private static Seconds sinceFilmFrame0(Seconds sinceMidnight, TimingSheet timing) {
    FrameRate rate = timing.clock().rate();
    Seconds day = rate.startOf(rate.framesPerDay());
    Seconds since = sinceMidnight.minus(rate.startOf(timing.plan().film().firstFrame().frame()));
    BigFraction days = since.dividedBy(day).add(BigFraction.of(1, 2));
    BigInteger[] parts = days.getNumerator().divideAndRemainder(days.getDenominator());
    long whole = parts[0].longValueExact() - (parts[1].signum() < 0 ? 1 : 0);
    return since.minus(day.times(whole));
  }

  /** What counts: the plan, else the sound, else the timecode. */
  public Optional<Seconds> best() {
    return told.or(() -> heard).or(() -> labeled);
  }

  /**
   * The performer of a clip, tied to the music by the best there is; as the plan has them where
   * that says it already.
   */
  public static Performer tied(Performer performer, ReceivedClip clip, TimingSheet timing) {
    return performer.tie().isPresent()
        ? performer
        : of(clip, timing)
            .best()
            .map(start -> performer.startingAt(start.minus(musicStart(timing))))
            .orElse(performer);
  }
}
