package org.barsheet.timing;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmClock;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.Section;
import org.barsheet.pulse.TempoAdvice;
import org.barsheet.pulse.TempoAdvice.Piece;
import org.barsheet.pulse.TempoRequest.Pin;

/** Works out what there is to say of a film's tempo. */
final class TempoReporter {

  private static final int MOST_ADVICE = 3;

  /** Cues that stand where the music is, whatever the film. */
  private static final Set<Cue.Kind> IN_THE_MUSIC =
      EnumSet.of(Cue.Kind.RETURN, Cue.Kind.MARK, Cue.Kind.BAR);

  private final Plan plan;
  private final Music music;
  private final FilmClock clock;
  private final List<FilmBar> bars;

  private TempoReporter(Plan plan, Music music, FilmClock clock, List<FilmBar> bars) {
    this.plan = plan;
    this.music = music;
    this.clock = clock;
    this.bars = bars;
  }

  static TempoReport report(
      Plan plan, Music music, FilmClock clock, List<FilmBar> bars, List<Cue> cues) {
    TempoReporter reporter = new TempoReporter(plan, music, clock, bars);
    return new TempoReport(reporter.sections(), reporter.pins(), reporter.shifts(cues));
  }

  /** Every bar belongs to one: a pickup, or one bar of another meter, to one of its own. */
  private List<TempoSection> sections() {
    return Section.of(music).stream().map(this::section).toList();
  }

  private TempoSection section(Section section) {
    List<FilmBar> own = bars.subList(section.first().index(), section.last().index() + 1);
    int whole = own.size() - (own.size() > 1 && section.first().isShort() ? 1 : 0);
    BigFraction tempo = BigFraction.of(60).divide(section.steadyBeat().value());
    Piece piece = new Piece(tempo, section.first().fullBeats(), whole);
    int onPhotographs = onPhotographs(piece, section.steadyBeat());
    return new TempoSection(
        section.name(),
        own.get(0),
        own.get(own.size() - 1),
        section.beats(),
        FramesPerBeat.nearest(clock.rate(), section.steadyBeat()),
        new Seconds(tempo).toDecimal(3),
        own.stream()
            .map(FilmBar::drift)
            .max(Comparator.comparing(TempoReporter::size))
            .orElse(Seconds.ZERO),
        onPhotographs,
        whole,
        music.source() == Music.Source.WRITTEN ? better(piece, onPhotographs) : List.of());
  }

  private static Seconds size(Seconds drift) {
    return drift.signum() < 0 ? Seconds.ZERO.minus(drift) : drift;
  }

  private int onPhotographs(Piece piece, Seconds beat) {
    return TempoAdvice.onGrid(piece, beat, clock.rate(), plan.film().framesPerPhotograph());
  }

  private List<TempoAdvice> better(Piece piece, int onPhotographs) {
    return TempoAdvice.near(piece, clock.rate(), plan.film().framesPerPhotograph()).stream()
        .filter(advice -> advice.barsOnGrid() > onPhotographs)
        .limit(MOST_ADVICE)
        .toList();
  }

  private List<FilmPin> pins() {
    return plan.music().tempo().pins().stream().flatMap(pin -> pin(pin).stream()).toList();
  }

  /** A bar that is played more than once is pinned the first time. */
  private Optional<FilmPin> pin(Pin pin) {
    return bars.stream()
        .filter(bar -> bar.bar().number() == pin.bar())
        .findFirst()
        .map(bar -> pin(bar, pin.at()));
  }

  private FilmPin pin(FilmBar bar, Seconds asked) {
    Seconds frame = clock.scoreTime(bar.startFrame());
    return new FilmPin(bar, asked, bar.start().minus(asked), bar.startFrame(), frame.minus(asked));
  }

  private List<PinShift> shifts(List<Cue> cues) {
    return music.source() == Music.Source.PINNED
        ? cues.stream()
            .filter(cue -> IN_THE_MUSIC.contains(cue.kind()))
            .map(cue -> new PinShift(cue, writtenFrame(cue)))
            .toList()
        : List.of();
  }

  private long writtenFrame(Cue cue) {
    Seconds written = music.score().tempo().secondsAt(music.tempo().tickAt(cue.at()));
    return FilmClock.of(plan.film(), music.score(), music.score().tempo()).frameAt(written);
  }
}
