package org.barsheet.timing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Kept;
import org.barsheet.align.places.Panels;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Match;
import org.barsheet.motif.Notes;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.Field;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Length;
import org.barsheet.plan.MotifRequest;
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
import org.barsheet.plan.Shoot;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;
import org.barsheet.plan.Workshop;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoRequest;

/** Invented plans for tests, in the words of a plan: places and lengths are written as text. */
public final class PlanBuilder {

  private final MusicBuilder music;
  private final List<Panel> panels = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private Hand hand = Hand.DEFAULT;
  private final List<Performer> performers = new ArrayList<>();
  private final List<Artwork.Model> models = new ArrayList<>();
  private final Map<String, FrameSpan> locks = new TreeMap<>();
  private final List<Kept.Run> laid = new ArrayList<>();
  private List<String> motifs = List.of("glimmer", "tide");
  private FrameRate rate = FrameRate.FPS_24;
  private Seconds musicStarts = Seconds.ZERO;
  private Film.MusicFrom musicFrom = Film.MusicFrom.START_OF_FILE;
  private Seconds tail = Seconds.ZERO;
  private int lead;
  private List<String> palette = List.of();
  private Optional<Camera> camera = Optional.empty();
  private Optional<Shoot> shoot = Optional.empty();

  public PlanBuilder(MusicBuilder music) {
    this.music = music;
    models.add(new Artwork.Model("quay", 1, "", ""));
    models.add(new Artwork.Model("small-lamp", 3, "green", ""));
  }

  public PlanBuilder rate(FrameRate wanted) {
    rate = wanted;
    return this;
  }

  public PlanBuilder musicStarts(Seconds wanted) {
    musicStarts = wanted;
    return this;
  }

  public PlanBuilder fromFirstNote() {
    musicFrom = Film.MusicFrom.FIRST_NOTE;
    return this;
  }

  public PlanBuilder tail(Seconds wanted) {
    tail = wanted;
    return this;
  }

  public PlanBuilder lead(int frames) {
    lead = frames;
    return this;
  }

  /** The artwork's colors, RRGGBB. */
  public PlanBuilder palette(String... colors) {
    palette = List.of(colors);
    return this;
  }

  public PlanBuilder motifs(String... names) {
    motifs = List.of(names);
    return this;
  }

  /** A flap of 90 degrees on its left edge, 2 by 4 squares. */
  public PlanBuilder opening(String name, String model) {
    return opening(name, model, new Opening.Hinged(Opening.Side.LEFT, 90));
  }

  public PlanBuilder opening(String name, String model, Opening.Motion motion) {
    openings.add(
        new Opening(name, new Rect(3, 7, 2, 4), model, motion, List.of(), where("openings")));
    return this;
  }

  /** A flap of 90 degrees on its left edge. */
  public PlanBuilder openingAt(String name, String model, Rect rect) {
    openings.add(
        new Opening(
            name,
            rect,
            model,
            new Opening.Hinged(Opening.Side.LEFT, 90),
            List.of(),
            where("openings")));
    return this;
  }

  /** A 50 mm lens before a sensor 36 mm wide. */
  public PlanBuilder camera(int pixelsWidth, int pixelsHeight) {
    camera = Optional.of(new Camera(50, 36, pixelsWidth, pixelsHeight));
    return this;
  }

  public PlanBuilder hand(Hand wanted) {
    hand = wanted;
    return this;
  }

  public PlanBuilder shoot(Shoot rates) {
    shoot = Optional.of(rates);
    return this;
  }

  public PlanBuilder performer(String name, String part) {
    performers.add(
        new Performer(
            name,
            part,
            name + ".mov",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            0,
            0,
            List.of(),
            "",
            where("performers")));
    return this;
  }

  /** Changes every performer. */
  public PlanBuilder performersWith(UnaryOperator<Performer> change) {
    performers.replaceAll(change);
    return this;
  }

  /** A panel named by its number in the story, with a cue and a length as a plan writes them. */
  public PlanBuilder panel(String cue, String length) {
    return panel(cue, length, List.of());
  }

  public PlanBuilder panel(String cue, String length, List<Reveal> reveals) {
    String name = Integer.toString(panels.size() + 1);
    boolean asked = !length.isEmpty();
    panels.add(
        new Panel(
            name,
            "",
            Place.parse(cue, rate),
            reveals.isEmpty() ? new Panel.OnCue() : new Panel.AutoCut(),
            asked ? Optional.of(Length.parse(length)) : Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            reveals,
            List.of(),
            false,
            new Where("quay.yaml", "line " + (panels.size() + 10))));
    return this;
  }

  /** Changes the last panel. */
  public PlanBuilder with(UnaryOperator<Panel> change) {
    panels.set(panels.size() - 1, change.apply(panels.get(panels.size() - 1)));
    return this;
  }

  public PlanBuilder cut(Panel.Cut cut) {
    return with(
        p ->
            new Panel(
                p.name(),
                p.action(),
                p.cue(),
                cut,
                p.length(),
                p.field(),
                p.drawing(),
                p.reveals(),
                p.appears(),
                p.locked(),
                p.where()));
  }

  /** What the camera sees in the last panel; it stands still. */
  public PlanBuilder field(double left, double top, double width) {
    Rect rect = new Rect(left, top, width, width * 9 / 16);
    return field(new Field(rect, rect, Slow.NONE));
  }

  public PlanBuilder field(Field field) {
    return with(
        p ->
            new Panel(
                p.name(),
                p.action(),
                p.cue(),
                p.cut(),
                p.length(),
                Optional.of(field),
                p.drawing(),
                p.reveals(),
                p.appears(),
                p.locked(),
                p.where()));
  }

  public PlanBuilder appears(String performer, String opening) {
    return with(
        p ->
            new Panel(
                p.name(),
                p.action(),
                p.cue(),
                p.cut(),
                p.length(),
                p.field(),
                p.drawing(),
                p.reveals(),
                List.of(new Panel.Appears(performer, opening)),
                p.locked(),
                p.where()));
  }

  /** Locks the last panel, on frames of an earlier sheet. */
  public PlanBuilder locked(long start, long endExclusive) {
    locks.put(panels.get(panels.size() - 1).name(), new FrameSpan(start, endExclusive));
    return with(
        p ->
            new Panel(
                p.name(),
                p.action(),
                p.cue(),
                p.cut(),
                p.length(),
                p.field(),
                p.drawing(),
                p.reveals(),
                p.appears(),
                true,
                p.where()));
  }

  private static Where where(String section) {
    return new Where("quay.yaml", section);
  }

  public Plan build() {
    Film film =
        new Film(
            rate,
            Timecode.parse(rate, "01:00:00:00"),
            musicStarts,
            musicFrom,
            2,
            lead,
            12,
            tail,
            1920,
            1080,
            Optional.of(Film.USUAL_POP),
            Film.Paper.A4);
    return new Plan(
        PlanText.of(Path.of("quay.yaml")),
        "Lamplighters' Quay",
        film,
        new MusicRequest(Path.of("quay.mid"), TempoRequest.DEFAULT, Optional.empty()),
        motifs.stream().map(PlanBuilder::motif).toList(),
        new Workshop(
            new Artwork(25.4, 24, 13.5, palette, 0, models), openings, camera, hand, shoot),
        performers,
        SentClips.NONE,
        Delivery.NONE,
        panels);
  }

  private static MotifRequest motif(String name) {
    return new MotifRequest(
        name,
        List.of(new MotifRequest.Written(Notes.parse("C5/4 E5/8 G5/8 C6/2"))),
        Accent.LAST,
        Match.TONAL,
        Set.of(),
        where("motifs"));
  }

  private Kept kept() {
    return new Kept(locks, laid);
  }

  /** An earlier sheet laid the first reveal of the last panel on these frames. */
  public PlanBuilder laid(long firstFrame, long landsFrame) {
    Panel last = panels.get(panels.size() - 1);
    String opening = last.reveals().get(0).opening();
    laid.add(new Kept.Run(last.name(), opening, firstFrame, landsFrame));
    return this;
  }

  /**
   * Marks the reveals of the last panel as photographed, the first on frames of an earlier sheet.
   */
  public PlanBuilder photographed(long firstFrame, long landsFrame) {
    laid(firstFrame, landsFrame);
    return with(
        p ->
            Panels.with(p, p.cue(), p.length(), p.reveals().stream().map(Reveals::taken).toList()));
  }

  /** What the aligner works on. */
  public AlignerInput input() {
    return new TimingPlanner(build(), music.build(), music.occurrences()).input(kept());
  }

  /** The best few ways to lay the plan. */
  List<FilmLayout> layouts(int count) {
    return TimingPlanner.layouts(build(), music.build(), music.occurrences(), kept(), count);
  }

  /** The plan laid on its music. */
  public TimingSheet time() {
    Music built = music.build();
    return TimingPlanner.plan(build(), built, music.occurrences(), kept());
  }
}
