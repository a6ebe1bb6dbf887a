package org.barsheet.movie;

import java.util.List;
import java.util.Optional;
import org.barsheet.calls.AgreedClap;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmBeat;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.Appearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.movie.GuideMoment.State;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.timing.SoundLayout;

/** Works out what one performer is told on each frame. */
final class GuideMoments {

  /** Bars of warning before they are seen. */
  private static final int WARNING_BARS = 2;

  /** The clap is announced so long before, and its mark stays so long, in seconds. */
  private static final Seconds CLAP_AHEAD = Seconds.of(3);

  private static final Seconds CLAP_MARK = Seconds.of(1, 2);

  private final FilmSheet sheet;
  private final MusicRuler ruler;
  private final List<Appearance> seen;
  private final long clapFrame;
  private final long clapAheadFrame;
  private final long clapMarkFrame;
  private final long countInFrame;

  GuideMoments(FilmSheet sheet, Performer performer) {
    this.sheet = sheet;
    this.ruler = new MusicRuler(sheet.timing().music(), sheet.timing().clock());
    this.seen =
        sheet.appearances().stream()
            .filter(each -> each.performer().name().equals(performer.name()))
            .toList();
    SoundLayout sound = SoundLayout.of(sheet.timing());
    FrameRate rate = sheet.plan().film().rate();
    Seconds clap = AgreedClap.inFilm(sheet.timing(), sound, performer);
    this.clapFrame = rate.nearestFrame(clap);
    this.clapAheadFrame = rate.nearestFrame(clap.minus(CLAP_AHEAD));
    this.clapMarkFrame = rate.nearestFrame(clap.plus(CLAP_MARK));
    this.countInFrame = rate.nearestFrame(sound.clicks().get(0).at());
  }

  GuideMoment at(long frame) {
    Optional<Appearance> now = seen.stream().filter(a -> a.frames().contains(frame)).findFirst();
    Optional<Appearance> next = seen.stream().filter(a -> a.frames().start() > frame).findFirst();
    Optional<Opening> opening =
        now.or(() -> next).or(() -> seen.stream().findFirst()).map(Appearance::opening);
    State state =
        now.isPresent()
            ? State.SEEN
            : next.filter(each -> frame >= warnedFrom(each)).isPresent()
                ? State.READY
                : State.NOT_SEEN;
    String told = now.map(this::untilWhen).orElseGet(() -> next.map(this::fromWhen).orElse(none()));
    Optional<FilmBar> bar = barAt(frame);
    return new GuideMoment(
        barWords(bar, frame),
        bar.isPresent() ? beat(frame) : 0,
        bar.map(each -> each.bar().beatTicks().size()).orElse(0),
        state,
        told,
        clap(frame),
        frame >= clapFrame && frame < clapMarkFrame,
        opening);
  }

  private String none() {
    return seen.isEmpty() ? "You aren't on screen in this film." : "You aren't on screen again.";
  }

  private String untilWhen(Appearance now) {
    return "in " + now.opening().name() + ", until " + place(now.frames().endExclusive());
  }

  private String fromWhen(Appearance next) {
    return "Next at " + place(next.frames().start()) + ", in " + next.opening().name();
  }

  /** The bar line two bars before the bar in which they are seen first. */
  private long warnedFrom(Appearance next) {
    List<FilmBar> bars = sheet.timing().bars();
    int index = 0;
    while (index + 1 < bars.size() && bars.get(index + 1).startFrame() <= next.frames().start()) {
      index++;
    }
    return bars.get(Math.max(0, index - WARNING_BARS)).startFrame();
  }

  private Optional<FilmBar> barAt(long frame) {
    return sheet.timing().bars().stream()
        .filter(bar -> frame >= bar.startFrame() && frame < bar.startFrame() + bar.lengthFrames())
        .findFirst();
  }

  private String barWords(Optional<FilmBar> bar, long frame) {
    if (bar.isPresent()) {
      return "bar " + bar.get().bar().number();
    }
    boolean after = frame > sheet.timing().clock().musicStartFrame();
    return after ? "after the music" : frame < countInFrame ? "ready" : "count-in";
  }

  private int beat(long frame) {
    return ruler
        .latestBeatAtOrBefore(frame)
        .map(FilmBeat::place)
        .map(p -> p.beat().intValue())
        .orElse(1);
  }

  /** {@code bar 12 beat 3}, or the film's end. */
  private String place(long frame) {
    if (frame >= sheet.timing().lengthFrames()) {
      return "the film's end";
    }
    return ruler
        .latestBeatAtOrBefore(frame)
        .map(FilmBeat::place)
        .map(place -> "bar " + place.bar() + " beat " + place.beat().intValue())
        .orElse("the film's beginning");
  }

  private String clap(long frame) {
    if (frame < clapAheadFrame || frame >= clapMarkFrame) {
      return "";
    }
    return frame < clapFrame ? "Clap once, in frame, when the mark ♦ comes" : "♦ CLAP";
  }
}
