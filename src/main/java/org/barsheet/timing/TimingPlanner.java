package org.barsheet.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.align.Alignment;
import org.barsheet.align.PanelAligner;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Costs;
import org.barsheet.align.places.FreePlaces;
import org.barsheet.align.places.Kept;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmBars;
import org.barsheet.cues.FilmClock;
import org.barsheet.cues.MotifSearch;
import org.barsheet.cues.MusicRuler;
import org.barsheet.cues.PlaceResolver;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;

/** Puts a plan's panels on the frames of a film: the front door of this package. */
public final class TimingPlanner {

  /**
   * Longest film in frames, 10 h 25 min at 24 a second. A sheet of a spreadsheet has 1,048,576 rows
   * (Microsoft, "Excel specifications and limits"), and every long hold takes one more.
   */
  static final long MOST_FRAMES = 900_000;

  /**
   * Most panels of a plan. 3,000, whatever they ask for, were measured to take up to 13 s of
   * processor time and 0.4 GB.
   */
  static final int MOST_PANELS = 4_000;

  private final Plan plan;
  private final PlainMotifs plainMotifs;
  private final Music music;
  private final FilmClock clock;
  private final MusicRuler ruler;
  private final Cues cues;
  private final Seconds filmEnd;

  TimingPlanner(Plan plan, Music music, List<Occurrence> occurrences) {
    this.plainMotifs = new PlainMotifs(plan, MotifSearch.tooPlain(plan, music));
    this.plan = plainMotifs.without();
    this.music = music;
    this.clock = FilmClock.of(plan.film(), music);
    this.ruler = new MusicRuler(music, clock);
    this.cues = new Cues(music, ruler, occurrences);
    this.filmEnd = music.lastSoundingBarEnd().plus(plan.film().tail());
  }

  /**
   * Every panel on its frames.
   *
   * @param occurrences every return of the plan's motifs, in order of time
   * @param kept what an earlier sheet laid down: locked panels and photographed reveals keep it
   * @throws InputException if a place cannot be found, or the panels cannot stand together
   */
  public static TimingSheet plan(Plan plan, Music music, List<Occurrence> occurrences, Kept kept) {
    return new TimingPlanner(plan, music, occurrences).sheet(kept);
  }

  /**
   * The best few whole answers, cheapest first.
   *
   * @param count how many at most, 1 or more
   * @throws InputException as {@link #plan(Plan, Music, List, Kept)} does
   */
  public static List<FilmLayout> layouts(
      Plan plan, Music music, List<Occurrence> occurrences, Kept kept, int count) {
    return new TimingPlanner(plan, music, occurrences).layouts(kept, count);
  }

  private List<FilmLayout> layouts(Kept kept, int count) {
    AlignerInput input = input(kept);
    List<PanelAligner.Choice> choices = new PanelAligner(input).best(count);
    List<Shot> best = shots(input, choices.get(0));
    long least = choices.get(0).alignment().layout().cost();
    List<FilmLayout> answers = new ArrayList<>();
    for (PanelAligner.Choice choice : choices) {
      double more = (double) (choice.alignment().layout().cost() - least) / Costs.ONE;
      answers.add(FilmLayout.of(more, choice.why().orElse(""), best, shots(input, choice)));
    }
    return List.copyOf(answers);
  }

  private List<Shot> shots(AlignerInput input, PanelAligner.Choice choice) {
    return new Shots(input, filmEnd, choice.alignment()).all();
  }

  private TimingSheet sheet(Kept kept) {
    AlignerInput input = input(kept);
    Alignment alignment = new PanelAligner(input).align();
    List<Shot> shots = new Shots(input, filmEnd, alignment).all();
    List<FilmBar> bars = FilmBars.of(music, clock);
    List<Cue> all = cues.with(shots.stream().map(Shot::cue).toList());
    return new TimingSheet(
        plan,
        music,
        clock,
        bars,
        TempoReporter.report(plan, music, clock, bars, all),
        all,
        shots,
        input.filmFrames(),
        tallies(shots),
        Findings.of(
            plainMotifs.findings(),
            TimingFindings.of(plan, music, input, shots, alignment.layout())));
  }

  /** What the aligner works on. */
  AlignerInput input(Kept kept) {
    long filmFrames = clock.frameAt(filmEnd);
    if (plan.panels().isEmpty()) {
      throw refused("the plan has no panels", "add a panel");
    }
    if (plan.panels().size() > MOST_PANELS) {
      throw refused(
          String.format(
              Locale.ROOT,
              "the plan has %,d panels; %,d at most can be placed at once",
              plan.panels().size(),
              MOST_PANELS),
          "split the score into reels with a plan each");
    }
    if (filmFrames < 1) {
      throw refused("the music has no length", "check the score");
    }
    if (filmFrames > MOST_FRAMES) {
      throw refused(
          String.format(
              Locale.ROOT,
              "the film has %,d frames; its exposure sheet can hold %,d",
              filmFrames,
              MOST_FRAMES),
          "split the score into reels with a plan each, or look for a stray note far past the end");
    }
    return new AlignerInput(
        plan.panels(),
        plan.film(),
        clock,
        ruler,
        cues,
        new PlaceResolver(music, plan.film(), clock, cues, filmFrames),
        FreePlaces.of(ruler, cues, filmFrames),
        filmFrames,
        kept);
  }

  private InputException refused(String sentence, String remedy) {
    return new InputException(Problem.ofFile(plan.text().file().toString(), sentence, remedy));
  }

  private List<MotifTally> tallies(List<Shot> shots) {
    List<MotifTally> tallies = new ArrayList<>();
    for (int m = 0; m < plan.motifs().size(); m++) {
      String name = plan.motifs().get(m).name();
      List<Cue> found = cues.counted(name);
      long likely = found.stream().filter(cue -> !Cues.isCertain(cue)).count();
      long used =
          shots.stream()
              .map(Shot::cue)
              .filter(cue -> cue.kind() == Cue.Kind.RETURN && cue.name().equals(name))
              .count();
      tallies.add(new MotifTally(name, "M" + (m + 1), found.size(), (int) likely, (int) used));
    }
    return List.copyOf(tallies);
  }
}
