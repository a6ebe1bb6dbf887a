package org.barsheet.received;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clips.ClipFacts.Sound;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.cues.FilmClock;
import org.barsheet.input.Prose;
import org.barsheet.plan.Performer;
import org.barsheet.score.Note;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.TimingSheet;

/**
 * Holds a recording of sound alone against the part its performer plays: whether it covers the part
 * and runs at the rate of the film's sound. All times are in the film, from film frame 0.
 */
public final class SoundCheck {

  /** Samples a second that sound for videos has (common practice, no source). */
  private static final int FILM_SOUND = 48_000;

  private final TimingSheet timing;
  private final FilmClock clock;
  private final Performer performer;
  private final Seconds length;
  private final Sound sound;
  private final ClipStarts starts;
  private final Optional<Sounding> part;
  private final List<ClipFault> faults = new ArrayList<>();

  /** From a part's first note to the end of its last. */
  private record Sounding(Seconds from, Seconds until) {}

  private SoundCheck(TimingSheet timing, ReceivedClip clip, Seconds length, Sound sound) {
    this.timing = timing;
    this.clock = timing.clock();
    this.performer = clip.performer();
    this.length = length;
    this.sound = sound;
    this.starts = ClipStarts.of(clip, timing);
    this.part = sounding();
  }

  /** What is wrong with a sound file; nothing for a film, or for what was not read. */
  public static List<ClipFault> of(ReceivedClip clip, TimingSheet timing) {
    if (clip.facts().isEmpty() || clip.sound().isEmpty()) {
      return List.of();
    }
    Seconds length = clip.facts().get().length();
    SoundCheck check = new SoundCheck(timing, clip, length, clip.sound().get());
    check.check();
    return List.copyOf(check.faults);
  }

  private void add(Severity severity, String sentence, String remedy) {
    faults.add(new ClipFault(severity, performer.clip() + " " + sentence, remedy));
  }

  private Optional<Sounding> sounding() {
    List<Note> notes =
        timing.music().score().parts().stream()
            .filter(one -> one.name().equals(performer.part()))
            .findFirst()
            .map(timing.music().score()::notesOf)
            .orElse(List.of());
    if (notes.isEmpty()) {
      return Optional.empty();
    }
    long on = notes.stream().mapToLong(Note::onTick).min().orElseThrow();
    long off = notes.stream().mapToLong(Note::offTick).max().orElseThrow();
    return Optional.of(new Sounding(filmTime(on), filmTime(off)));
  }

  private Seconds filmTime(long tick) {
    return clock.filmTime(timing.music().tempo().secondsAt(tick));
  }

  private void check() {
    Optional<Seconds> start = starts.best();
    rate(start);
    part.ifPresent(
        sounding -> {
          if (start.isPresent()) {
            begins(start.get(), sounding);
            ends(start.get().plus(length), sounding);
          } else {
            lasts(sounding);
          }
        });
  }

  private long frames(Seconds time) {
    return clock.rate().nearestFrame(time);
  }

  private static String filmFrames(long count) {
    return Prose.count(count, "frame") + " of the film";
  }

  private String timecode(Seconds inFilm) {
    long frame = timing.plan().film().firstFrame().frame() + frames(inFilm);
    return Timecode.ofFrame(clock.rate(), Math.floorMod(frame, clock.rate().framesPerDay()))
        .toString();
  }

  /** Read as 48000 samples a second, other rates last longer or shorter than they did. */
  private void rate(Optional<Seconds> start) {
    if (sound.samplesPerSecond() == FILM_SOUND) {
      return;
    }
    Seconds until = part.map(s -> s.until().minus(start.orElse(s.from()))).orElse(length);
    BigFraction faster = BigFraction.of(sound.samplesPerSecond(), FILM_SOUND).subtract(1);
    long late = frames(until.times(faster));
    String drift =
        late == 0
            ? ""
            : ": unconverted, it is "
                + filmFrames(Math.abs(late))
                + (late > 0 ? " late" : " early")
                + " at the end"
                + (part.isPresent() ? " of the part" : "");
    add(
        late == 0 ? Severity.REMARK : Severity.WARNING,
        "has " + sound.samplesPerSecond() + " samples a second, not " + FILM_SOUND + drift,
        "convert it to " + FILM_SOUND + " samples a second, keeping its speed");
  }

  private void begins(Seconds start, Sounding sounding) {
    long late = frames(start.minus(sounding.from()));
    if (late > 0) {
      add(
          Severity.WARNING,
          "begins "
              + filmFrames(late)
              + " too late: "
              + performer.part()
              + " plays from "
              + timecode(sounding.from()),
          "ask for a take that begins before the count-in, or check its start again");
    }
  }

  private void ends(Seconds end, Sounding sounding) {
    long early = frames(sounding.until().minus(end));
    if (early > 0) {
      add(
          Severity.WARNING,
          "is "
              + filmFrames(early)
              + " too short: "
              + performer.part()
              + " plays until "
              + timecode(sounding.until()),
          "ask for a take that runs on, or check its start again");
    }
  }

  /** Without a start, a file shorter than the part is too short wherever it lies. */
  private void lasts(Sounding sounding) {
    long early = frames(sounding.until().minus(sounding.from()).minus(length));
    if (early > 0) {
      add(
          Severity.WARNING,
          "is at least "
              + filmFrames(early)
              + " too short: "
              + performer.part()
              + " plays for "
              + sounding.until().minus(sounding.from()).toDecimal(1)
              + " s",
          "ask for a take that runs on");
    }
  }
}
