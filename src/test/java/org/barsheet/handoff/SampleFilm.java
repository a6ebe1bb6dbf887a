package org.barsheet.handoff;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmClock;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.Photograph;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.film.SheetNote;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.Field;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.MusicRequest;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.PlanText;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.SentClips;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;
import org.barsheet.plan.Workshop;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Score;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.MotifTally;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TempoReport;
import org.barsheet.timing.TimingSheet;

/**
 * A small film laid out by hand: eight bars of 3/4 at 96 bpm, from bar 5 at 80, with a pickup of
 * one beat and the music 2 s after the first frame; three panels, the second with two reveals at
 * once. Texts a person may type can be replaced by hostile ones.
 */
public final class SampleFilm {

  private static final Where WHERE = new Where("sample.yaml", "line 1");
  private static final Opening.Motion FLAP = new Opening.Hinged(Opening.Side.LEFT, 90);

  private final FrameRate rate;
  private String firstFrame = "01:00:00:00";
  private String word = "";
  private Optional<Seconds> pop = Optional.of(Film.USUAL_POP);

  private SampleFilm(FrameRate rate) {
    this.rate = rate;
  }

  public static SampleFilm at(FrameRate rate) {
    return new SampleFilm(rate);
  }

  /** Begins the film's timecode elsewhere. */
  public SampleFilm from(String label) {
    this.firstFrame = label;
    return this;
  }

  /** Puts the pop elsewhere, or leaves it out. */
  public SampleFilm pop(Optional<Seconds> before) {
    this.pop = before;
    return this;
  }

  /** Puts a text behind every name and into every sentence that comes from outside. */
  public SampleFilm saying(String text) {
    this.word = text;
    return this;
  }

  public FilmSheet sheet() {
    SampleMusic written = new SampleMusic(rate, word);
    Score score = written.score();
    FilmClock clock = new FilmClock(rate, rate.nearestFrame(Seconds.of(2)), Seconds.ZERO);
    Music music =
        new Music(
            score,
            score.tempo(),
            score.bars(),
            Music.Source.WRITTEN,
            new TempoEvidence(0.98, TempoEvidence.Verdict.TRUE, "98 of 100 onsets on the grid"),
            "the written tempo is used");
    List<Cue> cues = written.cues(clock);
    Plan plan = plan();
    List<Shot> shots = shots(plan, cues, written.lengthFrames(clock));
    List<PlannedReveal> reveals = reveals(plan, shots);
    List<Finding> findings = List.of(finding());
    TimingSheet timing =
        new TimingSheet(
            plan,
            music,
            clock,
            written.filmBars(clock),
            TempoReport.EMPTY,
            cues,
            shots,
            written.lengthFrames(clock),
            List.of(new MotifTally("glimmer", "A", 2, 1, 2)),
            findings);
    List<OpeningState> states =
        List.of(
            new OpeningState(named("lamp-1"), 0, 0, 0),
            new OpeningState(named("lamp-1"), 1, 0, 1),
            new OpeningState(named("lamp-1"), 2, 1, 1));
    return new FilmSheet(
        List.of(
            new InputFile("plan", named("sample.yaml"), "0a".repeat(32)),
            new InputFile("score", named("sample.mid"), "1b".repeat(32))),
        timing,
        reveals,
        List.of(movement(plan)),
        ShootingPlan.of(timing, List.of(movement(plan)), reveals, states),
        states,
        List.of(
            new Appearance(
                1,
                plan.performers().get(0),
                plan.workshop().openings().get(0),
                new FrameSpan(reveals.get(0).firstGapFrame(), shots.get(1).frames().endExclusive()),
                0.75)),
        List.of(),
        List.of(
            new SheetNote(
                shots.get(1).cue().accentFrame(), SheetNote.Column.SOUND, "A", true, "glimmer 1")),
        findings,
        Optional.empty());
  }

  private String named(String plain) {
    return plain + word;
  }

  private Plan plan() {
    Film film =
        new Film(
            rate,
            Timecode.parse(rate, firstFrame),
            Seconds.of(2),
            Film.MusicFrom.START_OF_FILE,
            2,
            0,
            12,
            Seconds.ZERO,
            1920,
            1080,
            pop,
            Film.Paper.A4);
    return new Plan(
        new PlanText(
            Path.of("sample.yaml"), Optional.empty(), Set.of("film.frame-rate"), List.of()),
        named("The paper harbour"),
        film,
        new MusicRequest(Path.of("sample.mid"), TempoRequest.DEFAULT, Optional.empty()),
        List.of(),
        new Workshop(
            new Artwork(
                25.4,
                24,
                13.5,
                List.of("28786E", "C8963C", "142850"),
                40,
                List.of(new Artwork.Model(named("small-lamp"), 3, "green", ""))),
            List.of(opening("lamp-1", 3), opening("lamp-2", 8)),
            Optional.empty(),
            Hand.DEFAULT,
            Optional.empty()),
        List.of(performer()),
        SentClips.NONE,
        Delivery.NONE,
        List.of(
            panel(
                "1",
                "Fog over the quay",
                new Place.AtBar(1, OptionalInt.empty(), BigFraction.ONE),
                List.of()),
            panel(
                "2",
                "The baker's lamp",
                new Place.OfMotif("glimmer", OptionalInt.of(1), OptionalInt.empty()),
                List.of(reveal("lamp-1", 10), reveal("lamp-2", 5))),
            panel(
                "3",
                "Gulls",
                new Place.OfMotif("glimmer", OptionalInt.of(2), OptionalInt.empty()),
                List.of())));
  }

  private Opening opening(String name, double left) {
    return new Opening(
        named(name), new Rect(left, 7, 2, 4), named("small-lamp"), FLAP, List.of(), WHERE);
  }

  private Performer performer() {
    return new Performer(
        named("cello"),
        named("Celesta"),
        named("cello.mov"),
        Optional.of(FrameRate.FPS_29_97),
        Optional.of(new Performer.Clap(Seconds.of(-5), 143)),
        Optional.empty(),
        1080,
        1920,
        List.of("00A03C"),
        "",
        WHERE);
  }

  private Reveal reveal(String opening, int photographs) {
    return new Reveal(
        named(opening),
        Reveal.Way.OPENS,
        photographs,
        2,
        Slow.END,
        Reveal.EvenIn.ANGLE,
        Reveal.Lands.FULLY_OPEN,
        new Reveal.OnAccent(),
        Optional.empty(),
        Reveal.Taken.NOT_YET,
        WHERE);
  }

  private Panel panel(String name, String action, Place cue, List<Reveal> reveals) {
    return new Panel(
        named(name),
        named(action),
        cue,
        new Panel.AutoCut(),
        Optional.empty(),
        Optional.of(new Field(new Rect(0, 0, 24, 13.5), new Rect(1, 4.6, 6, 3.375), Slow.BOTH)),
        Optional.empty(),
        reveals,
        reveals.isEmpty()
            ? List.of()
            : List.of(new Panel.Appears(named("cello"), reveals.get(0).opening())),
        false,
        WHERE);
  }

  private List<Shot> shots(Plan plan, List<Cue> cues, long end) {
    Cue first = cues.get(1);
    Cue second = cues.get(3);
    long cut = first.accentFrame() - 2L * 9 - 12;
    return List.of(
        shot(0, plan, cues.get(0), new FrameSpan(0, cut), List.of()),
        shot(
            1,
            plan,
            first,
            new FrameSpan(cut, second.frame()),
            List.of(landing(plan, 0, first), landing(plan, 1, first))),
        shot(2, plan, second, new FrameSpan(second.frame(), end), List.of()));
  }

  private static Shot.Landing landing(Plan plan, int index, Cue cue) {
    Reveal reveal = plan.panels().get(1).reveals().get(index);
    RevealRoom room =
        new RevealRoom(
            reveal,
            cue.accentFrame(),
            cue.accentFrame(),
            Optional.empty(),
            PhotographRun.waysToShow(reveal));
    return new Shot.Landing(room, PhotographRun.asAsked(reveal));
  }

  private Shot shot(int index, Plan plan, Cue cue, FrameSpan frames, List<Shot.Landing> landings) {
    return new Shot(
        index,
        plan.panels().get(index),
        cue,
        frames,
        cue.place(),
        new BigDecimal("3.25"),
        "glimmer 1",
        "3.25 bars",
        named("asked for by name"),
        Optional.empty(),
        landings);
  }

  private List<PlannedReveal> reveals(Plan plan, List<Shot> shots) {
    Shot shot = shots.get(1);
    return List.of(planned(plan, shot, 0, 10), planned(plan, shot, 1, 5));
  }

  private PlannedReveal planned(Plan plan, Shot shot, int index, int photographs) {
    long lands = shot.reveals().get(index).room().landsFrame();
    long firstGap = lands - 2L * (photographs - 1);
    List<Exposure> exposures = new ArrayList<>();
    exposures.add(exposure(shot.frames().start(), firstGap, 0, 0));
    for (int k = 1; k <= photographs; k++) {
      long start = firstGap + 2L * (k - 1);
      long end = k == photographs ? shot.frames().endExclusive() : start + 2;
      exposures.add(
          exposure(start, end, k * 10 / photographs, Slow.END.progress((double) k / photographs)));
    }
    long half =
        exposures.stream()
            .filter(exposure -> exposure.progress() >= 0.5)
            .findFirst()
            .orElseThrow()
            .frames()
            .start();
    return new PlannedReveal(
        shot.index(),
        shot.panel().reveals().get(index),
        plan.workshop().openings().get(index),
        named("small-lamp"),
        index + 1,
        shot.cue().accentFrame(),
        lands,
        firstGap,
        half,
        lands,
        exposures,
        Optional.empty());
  }

  private Exposure exposure(long start, long end, int photograph, double progress) {
    return new Exposure(
        new FrameSpan(start, end), new Photograph(named("small-lamp"), photograph), progress);
  }

  private Movement movement(Plan plan) {
    return Movement.of(
        named("small-lamp"),
        plan.workshop().openings().get(0),
        List.of(named("lamp-1"), named("lamp-2")),
        plan.workshop().artwork(),
        plan.workshop().hand(),
        Slow.END,
        Reveal.EvenIn.ANGLE,
        10);
  }

  private Finding finding() {
    return new Finding(
        Finding.Severity.WARNING,
        Finding.Concerns.DIRECTOR,
        named("3"),
        "bar 6",
        OptionalLong.of(600),
        named("glimmer 2 is only likely"),
        named("listen to it"));
  }
}
