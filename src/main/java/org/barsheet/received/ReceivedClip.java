package org.barsheet.received;

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
 */
public record ReceivedClip(
    Performer performer, State state, Optional<ClipFacts> facts, String reason, String remedy) {

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
    return new ReceivedClip(performer, State.MISSING, Optional.empty(), "", "");
  }

  /** A clip that has come, as somebody says, and is not where they say. */
  public static ReceivedClip lost(Performer performer, String reason, String remedy) {
    return new ReceivedClip(performer, State.MISSING, Optional.empty(), reason, remedy);
  }

  public static ReceivedClip unreadable(Performer performer, String reason, String remedy) {
    return new ReceivedClip(performer, State.UNREADABLE, Optional.empty(), reason, remedy);
  }

  public static ReceivedClip received(Performer performer, ClipFacts facts) {
    return new ReceivedClip(performer, State.RECEIVED, Optional.of(facts), "", "");
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
        rate().or(performer::clipRate),
        performer.clap(),
        performer.clipStart(),
        width,
        height,
        performer.clothes(),
        performer.behind(),
        performer.where());
  }
}
