package org.barsheet.production;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.barsheet.clock.FrameRate;
import org.barsheet.cues.MotifSearch;
import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.Movement;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.LaidDown;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.input.SyntaxException;
import org.barsheet.motif.Occurrence;
import org.barsheet.movie.Ffmpeg;
import org.barsheet.photographs.TakenPhotographs;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.begin.FirstPlan;
import org.barsheet.plan.begin.PlanWriter;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.production.places.Located;
import org.barsheet.production.places.Nearness;
import org.barsheet.production.places.Returns;
import org.barsheet.production.publish.Disk;
import org.barsheet.production.publish.OutputFolder;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.Reading;
import org.barsheet.pulse.Readings;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.received.ReceivedClip;
import org.barsheet.score.ScoreReader;
import org.barsheet.sound.SoundBank;
import org.barsheet.timing.FilmLayout;
import org.barsheet.timing.TimingPlanner;
import org.barsheet.timing.TimingSheet;

/** The whole road from files to files. Every method throws {@link InputException} on bad input. */
public final class Production {

  private Production() {}

  /** What is in a score file, with motifs nobody named yet. */
  public static ScoreSummary about(Path score) {
    Music music = music(score, TempoRequest.DEFAULT);
    return ScoreSummary.of(score, music, Suggestions.of(music));
  }

  /** A score with the tempo and the bars it is followed by. */
  public static Music music(Path score, TempoRequest request) {
    try {
      return MusicFinder.follow(ScoreReader.read(score), request);
    } catch (InputException refused) {
      throw refused.inFile(score.toString());
    }
  }

  /** The ways to hear a score: the one that is followed first, then its alternatives. */
  public static List<Reading> readings(Path score, TempoRequest request) {
    try {
      return Readings.of(ScoreReader.read(score), request);
    } catch (InputException refused) {
      throw refused.inFile(score.toString());
    }
  }

  /**
   * When every beat of a score sounds in a recording of it.
   *
   * @param performance a sound file, a video or a played MIDI file
   */
  public static FollowedMusic follow(Path score, Path performance) {
    return FollowedMusic.of(music(score, TempoRequest.DEFAULT), performance);
  }

  /** Every return of every motif of a plan. */
  public static Returns returns(Path planFile) {
    Plan plan = PlanReader.read(planFile);
    Music music = music(plan);
    return Returns.of(plan, music, MotifSearch.of(plan, music));
  }

  /** The same with ornamented and shortened returns, which are only possible ones. */
  public static Returns possibleReturns(Path planFile) {
    Plan plan = PlanReader.read(planFile);
    Music music = music(plan);
    return Returns.of(plan, music, MotifSearch.of(plan, music).withPossible());
  }

  /** How near each motif of a plan comes to a place. */
  public static Nearness near(Path planFile, String place) {
    Returns returns = returns(planFile);
    try {
      Place parsed = Place.parse(place, returns.plan().film().rate());
      return Nearness.of(returns, parsed, returns.find(List.of(parsed)).get(0));
    } catch (SyntaxException unclear) {
      throw new InputException(Problem.at("", "", unclear));
    }
  }

  /**
   * Writes a first plan that can be made as it stands.
   *
   * @param plan where to, ending in {@code .yaml} or {@code .xlsx}; a file that stands there stays
   */
  public static void begin(Path score, Path plan, String title, FrameRate rate) {
    NewFile.check(plan);
    Music music = music(score, TempoRequest.DEFAULT);
    FirstPlan first = FirstPlans.of(score, plan, title, rate, music);
    boolean workbook = plan.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
    byte[] bytes =
        workbook
            ? PlanWriter.workbook(first)
            : PlanWriter.yaml(first).getBytes(StandardCharsets.UTF_8);
    NewFile.write(plan, out -> out.write(bytes));
  }

  /**
   * Rewrites a plan for another version of its score, so that everything stands on the music it
   * stood on. The plan before is kept beside it.
   *
   * @param score the new version
   * @param folder with the sheets made from the version before
   * @param timecodes whether timecodes follow the music too
   * @param write whether to write, rather than only to tell
   */
  public static Adopted adopt(
      Path planFile, Path score, Path folder, boolean timecodes, boolean write) {
    return Adopting.adopt(planFile, score, folder, timecodes, write);
  }

  /**
   * Packs a film into one zip, from which it can be made elsewhere.
   *
   * @param folder with the sheets made last, as in {@link #film}
   * @param zip where to; a file that stands there stays
   */
  public static Packed pack(Path planFile, Path folder, Path zip) {
    NewFile.check(zip);
    Path plan = fromHere(planFile);
    return Packing.pack(plan, film(plan, folder, Progress.SILENT), folder, zip);
  }

  /**
   * Takes in photographs as they come out of a camera: checks them, and copies them beside the plan
   * under their permanent names.
   *
   * @param folder with the sheets made last, as in {@link #film}
   */
  public static PhotographsTaken photographs(
      Path planFile, Path folder, PhotographRequest request, Progress progress) {
    return Photographing.take(film(planFile, folder, progress), planFile, request, progress);
  }

  /** A file as seen from the working folder, or as it is where it lies on another drive. */
  private static Path fromHere(Path file) {
    Path parent = file.getParent();
    try {
      return parent == null || !file.isAbsolute()
          ? file
          : Path.of("").toRealPath().relativize(parent.toRealPath()).resolve(file.getFileName());
    } catch (IOException | IllegalArgumentException notThereOrElsewhere) {
      return file;
    }
  }

  /**
   * Where places of a plan's film are, in the order asked; {@code panel 17} is where it begins.
   *
   * @param folder with the sheets made last, as in {@link #film}
   */
  public static Located where(Path planFile, Path folder, List<String> places) {
    return Located.of(returns(planFile), places, () -> film(planFile, folder, Progress.SILENT));
  }

  /**
   * The best few whole answers, the one the sheets show first.
   *
   * @param folder with the sheets made last, as in {@link #film}
   * @param count how many at most, 1 or more
   */
  public static FilmLayouts layouts(Path planFile, Path folder, int count) {
    Returns returns = returns(planFile);
    Plan plan = returns.plan();
    List<FilmLayout> layouts =
        TimingPlanner.layouts(
            plan,
            returns.music(),
            returns.occurrences(),
            EarlierSheets.in(folder).kept(plan),
            count);
    return new FilmLayouts(plan.film(), layouts);
  }

  /** The whole film, with the sheets made last in the folder {@code make} writes by default. */
  public static FilmSheet film(Path planFile, Progress progress) {
    return film(planFile, defaultFolder(planFile), progress);
  }

  /**
   * The whole film, nothing written.
   *
   * @param folder with the sheets made last: locked panels and photographed reveals keep the frames
   *     they have there
   */
  public static FilmSheet film(Path planFile, Path folder, Progress progress) {
    return film(read(planFile, progress), folder, progress);
  }

  private static Plan read(Path planFile, Progress progress) {
    progress.step("reading the plan");
    return PlanReader.read(planFile);
  }

  /**
   * The one road, from a plan and its score to the sheet that everything is printed from.
   *
   * @param asked a plan, as it may not be on the disk yet
   * @param folder with the sheets made last, as in {@link #film(Path, Path, Progress)}
   */
  public static FilmSheet film(Plan asked, Path folder, Progress progress) {
    return film(asked, folder, "", KeptPlaces.in(folder), progress);
  }

  private static FilmSheet film(
      Plan asked, Path folder, String issue, KeptPlaces places, Progress progress) {
    List<ReceivedClip> clips = Clips.of(asked);
    EarlierSheets earlier = EarlierSheets.in(folder);
    Ticks ticks = Ticks.of(asked.text().file(), folder, earlier.film());
    Plan plan = ticks.held(Clips.known(asked, clips));
    progress.step("reading the score");
    Music music = music(plan);
    progress.step("finding motifs and placing panels");
    List<Occurrence> returns = MotifSearch.of(plan, music).occurrences();
    TimingSheet timing = placed(plan, music, returns, earlier);
    List<ReceivedClip> heard = HeardClips.of(asked, timing, clips, places, progress);
    progress.step("laying out reveals frame by frame");
    FilmSheet film =
        FilmPlanner.complete(HeardClips.tied(timing, heard), InputFiles.of(plan), heard);
    FilmSheet photographed =
        film.with(
            TakenPhotographs.in(
                Photographing.folder(asked.text().file()),
                film.movements().stream().map(Movement::name).toList()));
    FilmSheet listed = UnaskedClips.addedTo(photographed, asked);
    FilmSheet noted = ViewerNotes.addedTo(listed, asked.text().file(), folder);
    earlier.requireHeld(noted, returns);
    FilmSheet compared = earlier.film().map(noted::since).orElse(noted);
    return ticks.addedTo(compared).issued(issue, earlier.film());
  }

  /** Panels on frames; where that cannot be, what stands on other music is told first. */
  private static TimingSheet placed(
      Plan plan, Music music, List<Occurrence> returns, EarlierSheets earlier) {
    try {
      return TimingPlanner.plan(plan, music, returns, earlier.kept(plan));
    } catch (InputException refused) {
      throw earlier.toldBeside(refused, plan, LaidDown.music(plan, music, returns));
    }
  }

  /**
   * What lies between two versions: two scores, or two plans, folders of sheets or {@code
   * timing.json} files in any pairing.
   */
  public static VersionComparison compare(Path before, Path now) {
    return VersionComparison.of(before, now);
  }

  /**
   * What differs from something sent out under a name.
   *
   * @param sheets a plan, a folder of sheets or a {@code timing.json} that knows of it
   * @param now the same of the later version
   * @param issue as {@code make --issue} was told
   */
  public static VersionComparison compareSince(Path sheets, Path now, String issue) {
    return VersionComparison.since(sheets, now, issue);
  }

  private static Music music(Plan plan) {
    InputFiles.check(plan);
    try {
      return MusicFinder.follow(ScoreReader.read(plan.music().score()), plan.music().tempo());
    } catch (InputException refused) {
      throw refused.inFile(plan.text().file().toString());
    }
  }

  /** Where {@code make} writes unless told otherwise: {@code <name>-sheets} beside the plan. */
  public static Path defaultFolder(Path planFile) {
    return planFile.resolveSibling(name(planFile) + "-sheets");
  }

  /** A file's name without folders and extension. */
  public static String name(Path planFile) {
    return FileNames.withoutExtension(planFile);
  }

  /**
   * Refuses to make sheets over a workbook that somebody has open.
   *
   * @throws InputException naming the workbook
   */
  public static void requireClosedWorkbook(Path planFile, Path folder) {
    OpenWorkbook.refuse(folder.resolve(name(planFile) + ".xlsx"));
  }

  /**
   * Makes every sheet and file, all of them or none.
   *
   * @param extras what to make besides
   */
  public static Made make(Path planFile, Path folder, Extras extras, Progress progress) {
    return make(planFile, folder, extras, progress, new Disk());
  }

  /** The same on a disk that a test watches. */
  static Made make(Path planFile, Path folder, Extras extras, Progress progress, Disk disk) {
    if (FileNames.isTooLong(name(planFile))) {
      throw new InputException(
          Problem.ofFile(
              planFile.toString(),
              "the plan's name is too long for file names made from it",
              "rename the plan to at most 200 letters"));
    }
    Optional<SoundBank> bank = extras.soundBank().map(SoundBank::read);
    Optional<Ffmpeg> ffmpeg = extras.movie().findFfmpeg();
    Plan plan = read(planFile, progress);
    CompletableFuture<Void> loading = MeanwhileWorkbook.loadLibrary();
    // What is read of earlier sheets stays as it is until the new ones are there.
    try (OutputFolder out = OutputFolder.open(folder, disk)) {
      KeptPlaces places = KeptPlaces.in(folder);
      FilmSheet film = film(plan, folder, extras.issue(), places, progress);
      Sounds sounds =
          extras.sound() ? Sounds.of(film, name(planFile), bank, progress) : Sounds.NONE;
      Movies movies = new Movies(film, name(planFile), out, extras.movie(), ffmpeg, progress);
      Making making = new Making(film, name(planFile), places, out, progress);
      return extras.movie().frames().isPresent()
          ? withFrames(extras, movies, disk, () -> making.make(sounds, movies, extras))
          : making.make(sounds, movies, extras);
    } finally {
      loading.join();
    }
  }

  /** The frames are published after everything else, in a folder of their own. */
  private static Made withFrames(Extras extras, Movies movies, Disk disk, Supplier<Made> make) {
    try (OutputFolder frames = OutputFolder.open(extras.movie().frames().orElseThrow(), disk)) {
      movies.writeFrames(frames);
      Made made = make.get();
      frames.publish();
      return made;
    }
  }
}
