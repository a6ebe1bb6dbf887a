package org.barsheet.received;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.clips.ClipFacts.Video;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.exposure.Appearance;
import org.barsheet.input.Prose;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;
import org.barsheet.timing.Finding.Severity;

/** Holds a received clip against the plan and against what the film needs of it. */
public final class ClipCheck {

  private final ReceivedClip clip;
  private final FilmClock clock;
  private final String name;
  private final List<ClipFault> faults = new ArrayList<>();

  private ClipCheck(ReceivedClip clip, FilmClock clock) {
    this.clip = clip;
    this.clock = clock;
    this.name = clip.performer().clip();
  }

  /** What is wrong with the clip wherever it is seen; nothing for a clip that is not there. */
  public static List<ClipFault> ofWhole(ReceivedClip clip, FilmClock clock, List<Appearance> seen) {
    ClipCheck check = new ClipCheck(clip, clock);
    switch (clip.state()) {
      // A clip nobody said had come is told once with all that are missing.
      case MISSING, UNREADABLE -> check.notRead();
      case RECEIVED -> check.whole(seen);
    }
    return List.copyOf(check.faults);
  }

  /** What keeps the clip from an appearance; nothing for a clip that was not read. */
  public static List<ClipFault> ofAppearance(ReceivedClip clip, FilmClock clock, Appearance seen) {
    ClipCheck check = new ClipCheck(clip, clock);
    clip.video().ifPresent(video -> check.appearance(video, seen));
    return List.copyOf(check.faults);
  }

  /** Whether a received clip serves as it is: nothing worse than a note is said of it. */
  public static boolean isUsable(List<ClipFault> faults) {
    return faults.stream().allMatch(fault -> fault.severity() == Severity.REMARK);
  }

  private void add(Severity severity, String sentence, String remedy) {
    faults.add(new ClipFault(severity, sentence, remedy));
  }

  private void notRead() {
    if (!clip.reason().isEmpty()) {
      add(Severity.WARNING, name + " " + clip.reason(), clip.remedy());
    }
  }

  private void whole(List<Appearance> seen) {
    Optional<Video> video = clip.video();
    if (video.isEmpty()) {
      if (!seen.isEmpty()) {
        add(Severity.WARNING, name + " has sound but no video", "ask for the video too");
      }
      return;
    }
    if (!video.get().steady()) {
      add(
          Severity.WARNING,
          name + " has a variable frame rate: " + mean() + " fps on average",
          "make it steady before editing: ffmpeg -i FILE -r "
              + clip.performer().clipRate().or(clip::steadyRate).map(ClipCheck::plain).orElse("24")
              + " -c:v libx264 -crf 12 -c:a copy STEADY.mov; its length is taken by time");
    } else if (clip.rate().isEmpty()) {
      add(
          Severity.WARNING,
          name + " has an unusual rate, " + mean() + " fps, so its frames can't be placed",
          "convert it to " + plain(clock.rate()) + " fps before editing");
    }
    clip.performer().clipRate().ifPresent(said -> rate(said, seen));
    size(video.get());
  }

  private String mean() {
    return clip.framesPerSecond().map(rate -> String.format(Locale.ROOT, "%.3f", rate)).orElse("?");
  }

  /** A rate other than the plan says drifts from the clap on. */
  private void rate(FrameRate said, List<Appearance> seen) {
    Optional<FrameRate> has = clip.rate();
    if (has.isEmpty() || has.get().framesPerSecond().equals(said.framesPerSecond())) {
      return;
    }
    long last = seen.stream().mapToLong(a -> a.frames().endExclusive()).max().orElse(0);
    double perSecond =
        has.get().framesPerSecond().doubleValue() - said.framesPerSecond().doubleValue();
    long off = Math.round(Math.abs(perSecond * sinceClap(last).toDouble()));
    add(
        off > 0 ? Severity.WARNING : Severity.REMARK,
        name
            + " has "
            + plain(has.get())
            + " fps, not "
            + plain(said)
            + " as the plan says: it would drift by "
            + Prose.count(off, "frame")
            + "; the file's own rate is used",
        "write clip-rate: " + plain(has.get()));
  }

  private Seconds sinceClap(long filmFrame) {
    Seconds musicStart = clock.rate().startOf(clock.musicStartFrame());
    Seconds clap =
        clip.performer().tie().map(Performer.Clap::at).orElse(Seconds.ZERO.minus(musicStart));
    return clock.rate().startOf(filmFrame).minus(musicStart).minus(clap);
  }

  private static String plain(FrameRate rate) {
    return rate.toString().replace("df", "");
  }

  private void size(Video video) {
    Performer said = clip.performer();
    boolean other =
        said.clipWidth() > 0
            && (said.clipWidth() != video.width() || said.clipHeight() != video.height());
    if (other) {
      String has = video.width() + "x" + video.height();
      String sentence =
          name + " is " + has + " pixels, not " + said.clipWidth() + "x" + said.clipHeight();
      add(Severity.REMARK, sentence + " as the plan says", "write clip-size: " + has);
    }
  }

  private void appearance(Video video, Appearance seen) {
    orientation(video, seen.opening().rect(), seen.opening().name());
    Optional<FrameSpan> asked = seen.clipFramesAsked(clock);
    OptionalLong first = seen.clipFrameAt(clock, seen.frames().start());
    OptionalLong last = seen.clipFrameAt(clock, seen.frames().endExclusive() - 1);
    if (asked.isPresent() && first.isPresent() && last.isPresent()) {
      begins(asked.get().start(), first.getAsLong());
      ends(frames(video), asked.get().endExclusive(), last.getAsLong());
    }
  }

  /** Frames it has, or will have once it is steady: its length counts, not what is stored. */
  private long frames(Video video) {
    return video.steady()
        ? video.frames()
        : clip.performer()
            .clipRate()
            .or(clip::steadyRate)
            .map(rate -> rate.nearestFrame(video.length()))
            .orElse(video.frames());
  }

  private void begins(long asked, long first) {
    if (first < 0) {
      add(
          Severity.ERROR,
          name + " begins " + Prose.count(-first, "frame") + " too late",
          "ask for a take that begins before the count-in, or check the clap again");
    } else if (asked < 0) {
      add(
          Severity.REMARK,
          name + " has " + Prose.count(-asked, "frame") + " too few in its first handle",
          "");
    }
  }

  private void ends(long frames, long asked, long last) {
    if (last >= frames) {
      add(
          Severity.ERROR,
          name + " is " + Prose.count(last + 1 - frames, "frame") + " too short",
          "ask for a take that runs on, or check the clap again");
    } else if (asked > frames) {
      add(
          Severity.REMARK,
          name + " has " + Prose.count(asked - frames, "frame") + " too few in its last handle",
          "");
    }
  }

  private void orientation(Video video, Rect opening, String where) {
    boolean upright = opening.height() > opening.width() && video.width() > video.height();
    boolean lying = opening.width() > opening.height() && video.height() > video.width();
    if (upright || lying) {
      add(
          Severity.WARNING,
          name
              + (upright ? " is landscape, but " : " is portrait, but ")
              + where
              + (upright ? " is taller than wide" : " is wider than tall"),
          "ask for a take in " + (upright ? "portrait" : "landscape"));
    }
  }
}
