package org.barsheet.received;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.input.Prose;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.TimingSheet;

/** Whether it is known where a clip lies, and whether all that says so agrees. */
public final class PlaceCheck {

  private final ReceivedClip clip;
  private final TimingSheet timing;
  private final FrameRate rate;
  private final ClipStarts starts;
  private final String name;
  private final List<ClipFault> faults = new ArrayList<>();

  private PlaceCheck(ReceivedClip clip, TimingSheet timing) {
    this.clip = clip;
    this.timing = timing;
    this.rate = timing.clock().rate();
    this.starts = ClipStarts.of(clip, timing);
    this.name = clip.performer().clip();
  }

  /** What is doubtful about a clip's place; nothing of one that was not read. */
  public static List<ClipFault> of(ReceivedClip clip, TimingSheet timing) {
    if (clip.facts().isEmpty()) {
      return List.of();
    }
    PlaceCheck check = new PlaceCheck(clip, timing);
    check.check();
    return List.copyOf(check.faults);
  }

  private void add(Severity severity, String sentence, String remedy) {
    faults.add(new ClipFault(severity, name + " " + sentence, remedy));
  }

  private void check() {
    Optional<Seconds> best = starts.best();
    if (best.isEmpty()) {
      unknown();
      return;
    }
    starts.told().ifPresentOrElse(this::heldAgainst, this::placedWithoutThePlan);
    starts.heard().ifPresent(heard -> drift());
  }

  private void heldAgainst(Seconds told) {
    starts
        .heard()
        .filter(heard -> isMoreThanAFrame(heard.minus(told)))
        .ifPresent(heard -> agree("sounds as if it begins", heard, told));
    starts.labeled().ifPresent(label -> agree("says it begins", label, told));
  }

  private void placedWithoutThePlan() {
    starts
        .heard()
        .ifPresent(
            heard -> {
              placedBySound(heard);
              starts.labeled().ifPresent(label -> disagree(label, heard));
            });
  }

  /** Sound of somebody who plays no part goes wherever the editor likes. */
  private void unknown() {
    if (clip.sound().isPresent() && clip.performer().part().isEmpty()) {
      return;
    }
    String why =
        clip.heard().isPresent()
            ? "isn't found by its sound"
            : clip.facts().orElseThrow().sinceMidnight().isPresent()
                ? "carries a time of day, not film timecode"
                : "doesn't say when it begins";
    add(
        Severity.WARNING,
        why + ", so it can't be placed",
        "write clips: {"
            + clip.performer().name()
            + ": {file: …, start: -10 s}}, from the music's start, or note its clap");
  }

  private long frames(Seconds time) {
    return rate.nearestFrame(time);
  }

  /** A clap is noted to a frame, so sound agrees with it to a frame. */
  private boolean isMoreThanAFrame(Seconds apart) {
    return Math.abs(apart.toDouble()) > rate.frameDuration().toDouble();
  }

  private void agree(String says, Seconds other, Seconds told) {
    long apart = frames(other.minus(told));
    if (apart != 0) {
      add(
          Severity.WARNING,
          says
              + " at "
              + timecode(other)
              + ", the plan says "
              + timecode(told)
              + ": "
              + filmFrames(Math.abs(apart))
              + " apart; the plan wins",
          "check the clap or the start again; by that, it starts "
              + fromMusicStart(other)
              + " s from the music's start");
    }
  }

  private void disagree(Seconds label, Seconds heard) {
    long apart = frames(label.minus(heard));
    if (apart != 0) {
      add(
          Severity.WARNING,
          "says it begins at "
              + timecode(label)
              + ", its sound says "
              + timecode(heard)
              + ": "
              + filmFrames(Math.abs(apart))
              + " apart; the sound wins",
          "write clips: {" + clip.performer().name() + ": {file: …, start: …}} to settle it");
    }
  }

  private void placedBySound(Seconds heard) {
    HeardPlace place = clip.heard().orElseThrow();
    add(
        Severity.REMARK,
        "is placed by its sound ("
            + place.by()
            + "): it starts "
            + fromMusicStart(heard)
            + " s from the music's start, to "
            + (long) Math.ceil(place.within())
            + " ms",
        place.isSure() ? "" : "check it on a landing; write the start you find under clips");
  }

  /** Seconds from the music's start, to a millisecond. */
  private String fromMusicStart(Seconds inFilm) {
    Seconds musicStart = rate.startOf(timing.clock().musicStartFrame());
    return inFilm.minus(musicStart).toDecimal(3).toPlainString();
  }

  private void drift() {
    HeardPlace place = clip.heard().orElseThrow();
    double seconds = clip.facts().orElseThrow().length().toDouble() * place.drift() / 1e6;
    long off = Math.round(Math.abs(seconds) / rate.frameDuration().toDouble());
    if (off > 0) {
      add(
          Severity.WARNING,
          "runs "
              + (seconds > 0 ? "fast" : "slow")
              + ": by its end it is "
              + filmFrames(off)
              + (seconds > 0 ? " early" : " late"),
          String.format(
              Locale.ROOT, "play it at %.4f %% of its speed", 100 / (1 + place.drift() / 1e6)));
    }
  }

  private static String filmFrames(long count) {
    return Prose.count(count, "frame") + " of the film";
  }

  private String timecode(Seconds inFilm) {
    return timing.plan().film().timecode(frames(inFilm)).toString();
  }
}
