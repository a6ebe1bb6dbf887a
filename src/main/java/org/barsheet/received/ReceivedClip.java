package org.barsheet.received;

import java.util.Comparator;
import java.util.Optional;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clips.ClipFacts.Sound;
import org.barsheet.clips.ClipFacts.Video;
import org.barsheet.clock.FrameRate;
import org.barsheet.plan.Performer;

/**
 * What has come of a performer's clip.
 *
 * @param performer as the plan has them, before anything was learned from the file
 * @param state whether it is there
 * @param facts what the file says of itself, where it was received
 * @param reason why it cannot be read, in words that follow its name, else ""
 * @param remedy what to do about that
 * @param heard where it lies by its sound, where anybody listened
 */
public record ReceivedClip(
    Performer performer,
    State state,
    Optional<ClipFacts> facts,
    String reason,
    String remedy,
    Optional<HeardPlace> heard) {

  /** Rates differ by a thousandth at least (29.97 and 30): this much is the same rate. */
  private static final double SAME_RATE = 2e-4;

  /** Whether a clip is there. */
  public enum State {
    MISSING,
    UNREADABLE,
    RECEIVED
  }

  /** A clip that has not come yet. */
  public static ReceivedClip missing(Performer performer) {
    return lost(performer, "", "");
  }

  /** A clip that has come, as somebody says, and is not where they say. */
  public static ReceivedClip lost(Performer performer, String reason, String remedy) {
    return new ReceivedClip(
        performer, State.MISSING, Optional.empty(), reason, remedy, Optional.empty());
  }

  public static ReceivedClip unreadable(Performer performer, String reason, String remedy) {
    return new ReceivedClip(
        performer, State.UNREADABLE, Optional.empty(), reason, remedy, Optional.empty());
  }

  public static ReceivedClip received(Performer performer, ClipFacts facts) {
    return new ReceivedClip(
        performer, State.RECEIVED, Optional.of(facts), "", "", Optional.empty());
  }

  /** The same clip, once its sound was found elsewhere. */
  public ReceivedClip heardAt(HeardPlace place) {
    return new ReceivedClip(performer, state, facts, reason, remedy, Optional.of(place));
  }

  public Optional<Video> video() {
    return facts.flatMap(ClipFacts::video);
  }

  /** What a sound file says of its sound. */
  public Optional<Sound> sound() {
    return facts.flatMap(ClipFacts::sound);
  }

  /** Frames a second of its video, in the mean. */
  public Optional<Double> framesPerSecond() {
    return video().map(video -> 1 / video.frameDuration().toDouble());
  }

  /** Its rate, where it is steady and one that films have. */
  public Optional<FrameRate> rate() {
    return video().filter(Video::steady).flatMap(video -> nearest(video));
  }

  /** The film rate nearest to its mean, for a video at a wandering rate to be made steady at. */
  public Optional<FrameRate> steadyRate() {
    return video()
        .filter(video -> !video.steady())
        .map(
            video -> {
              double mean = 1 / video.frameDuration().toDouble();
              return FrameRate.ALL.stream()
                  .min(Comparator.comparingDouble(rate -> apart(rate, mean)))
                  .orElseThrow();
            });
  }

  private static double apart(FrameRate rate, double framesPerSecond) {
    return Math.abs(rate.framesPerSecond().doubleValue() - framesPerSecond);
  }

  private static Optional<FrameRate> nearest(Video video) {
    double frame = video.frameDuration().toDouble();
    return FrameRate.ALL.stream()
        .filter(rate -> Math.abs(rate.frameDuration().toDouble() / frame - 1) < SAME_RATE)
        .findFirst();
  }

  /** The performer with the rate and the size that the file itself has. */
  public Performer asReceived() {
    int width = video().map(Video::width).filter(w -> w > 0).orElse(performer.clipWidth());
    int height = video().map(Video::height).filter(h -> h > 0).orElse(performer.clipHeight());
    return new Performer(
        performer.name(),
        performer.part(),
        performer.clip(),
        rate().or(performer::clipRate).or(this::steadyRate),
        performer.clap(),
        performer.clipStart(),
        width,
        height,
        performer.clothes(),
        performer.behind(),
        performer.where());
  }
}
