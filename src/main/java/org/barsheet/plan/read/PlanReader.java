package org.barsheet.plan.read;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.input.InputException;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.MusicRequest;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;
import org.barsheet.plan.PlanText;
import org.barsheet.plan.SentClips;
import org.barsheet.plan.Shoot;
import org.barsheet.plan.Tolerances;
import org.barsheet.plan.Workshop;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.NamesOnDisk;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Texts;
import org.barsheet.pulse.TempoRequest;

/** Reads a plan and checks it. */
public final class PlanReader {

  private final PlanReading reading;

  private PlanReader(PlanReading reading) {
    this.reading = reading;
  }

  /**
   * Reads a plan written as YAML or as an {@code .xlsx} workbook, whatever its file is called.
   *
   * @param file the plan
   * @throws InputException with everything that is wrong with it, each with its place
   */
  public static Plan read(Path file) {
    return read(new PlanReading(file));
  }

  /**
   * Reads a plan that may not be on the disk as it is read.
   *
   * @param reading with nothing collected yet
   * @throws InputException as {@link #read(Path)}
   */
  public static Plan read(PlanReading reading) {
    return new PlanReader(reading).plan();
  }

  /**
   * The plan's file and every file it names, as far as it can be read: its table of panels, its
   * score, its drawings. A plan that is wrong names what it can.
   */
  public static Set<Path> filesOf(Path file) {
    PlanReader reader = new PlanReader(new PlanReading(file));
    try {
      reader.plan();
    } catch (InputException wrong) {
      // Told where the plan is read in earnest; here it only means that fewer files are known.
    }
    Set<Path> files = new LinkedHashSet<>();
    files.add(file);
    files.addAll(reader.reading.files());
    return files;
  }

  private Plan plan() {
    Entry.Keyed tree = PlanSource.read(reading);
    Plan plan = understood(new PlanSection("", "the plan", tree, PlanKeys.ROOT, reading));
    reading.problems().throwIfAny();
    return plan;
  }

  private Plan understood(PlanSection root) {
    String title = root.need("title", "", "give the film a title: title: …", Texts::plain);
    Path score =
        root.need("score", Path.of(""), "name the MIDI file: score: music.mid", Texts::file);
    FilmSection filmSection = FilmSection.read(filmOf(root));
    Film film = filmSection.film();
    Optional<PlanSection> musicSection = root.section("music", PlanKeys.MUSIC);
    TempoRequest tempo = MusicSection.read(musicSection);
    List<MotifRequest> motifs = new MotifSection(reading, filmSection).read(root);
    Artwork artwork = ArtworkSection.read(root.section("artwork", PlanKeys.ARTWORK), film);
    List<Opening> openings = new OpeningSection(artwork).read(root);
    List<Performer> performers = PerformerSection.read(root, film.rate());
    Known known =
        new Known(
            motifs.stream().map(MotifRequest::name).toList(),
            openings.stream().map(Opening::name).toList(),
            performers.stream().map(Performer::name).toList());
    RevealSection reveals =
        new RevealSection(filmSection, film.framesPerPhotograph(), openings, known);
    FieldSection fields = new FieldSection(artwork, film);
    SentClips clips = new ClipSection(reading, filmSection, film, known).read(root);
    Delivery delivery = DeliverySection.read(root);
    List<Panel> panels = new PanelSection(reading, filmSection, fields, reveals, known).read(root);
    NamesOnDisk names = new NamesOnDisk(reading.problems());
    names.check("openings", openings, Opening::name, Opening::where);
    names.check("performers", performers, Performer::name, Performer::where);
    names.check("panels", panels, Panel::name, Panel::where);
    MusicRequest music =
        new MusicRequest(
            reading.resolve(score),
            tempo,
            musicSection.flatMap(
                given -> RecordingSection.read(given, filmSection, film, reading)));
    Optional<Camera> camera = ShootSection.camera(root);
    Optional<Shoot> shoot = ShootSection.shoot(root);
    Hand hand = HandSection.read(root.section("hand", PlanKeys.HAND));
    Tolerances tolerances = TolerancesSection.read(root.section("tolerances", PlanKeys.TOLERANCES));
    return new Plan(
        new PlanText(reading.file(), reading.table(), reading.given(), reading.notes()),
        title,
        film,
        music,
        motifs,
        new Workshop(artwork, openings, camera, hand, shoot, tolerances),
        performers,
        clips,
        delivery,
        panels);
  }

  /** The film's settings; an empty section stands in, so that what is missing is said once. */
  private PlanSection filmOf(PlanSection root) {
    boolean misplaced = root.has("film");
    return root.section("film", PlanKeys.FILM)
        .orElseGet(
            () -> {
              Entry.Keyed empty = new Entry.Keyed(List.of(), root.where("film"));
              PlanReading unheard = misplaced ? new PlanReading(reading.file()) : reading;
              return new PlanSection("film", "film", empty, PlanKeys.FILM, unheard);
            });
  }
}
