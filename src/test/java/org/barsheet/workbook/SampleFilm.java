package org.barsheet.workbook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmClock;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.film.SheetNote;
import org.barsheet.motif.Certainty;
import org.barsheet.plan.Film;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.MotifTally;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TempoReport;
import org.barsheet.timing.TimingSheet;

/**
 * A film sheet made up step by step: shots one after another, reveals in them, and what is written
 * beside the frames.
 */
public final class SampleFilm {

  private static final int BEATS_PER_MINUTE = 96;

  /** A reveal asked for: where it lands in its shot, and how. */
  record Asked(String opening, int layer, long landsInShot, int photographs, int each) {}

  record Scene(String name, String action, long frames, List<Asked> reveals) {}

  private final FrameRate rate;
  private final List<Scene> scenes = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<SheetNote> extraNotes = new ArrayList<>();
  private String title = "Lamplighters’ Quay";
  private Film.Paper paper = Film.Paper.A4;
  private Optional<Path> drawing = Optional.empty();
  private List<String> performers = List.of("cello");
  private List<String> openings = List.of("lamp-1", "lamp-2", "gull", "attic");

  private SampleFilm(FrameRate rate) {
    this.rate = rate;
  }

  static SampleFilm at(FrameRate rate) {
    return new SampleFilm(rate);
  }

  /** Eight shots, two layers, long holds, findings of every severity. */
  public static SampleFilm harbour() {
    return at(FrameRate.FPS_24)
        .shot("1", "Fog over the quay", 363)
        .shot("2", "The baker's lamp", 198)
        .reveal("lamp-1", 1, 75, 30, 2)
        .shot("3", "A gull lands on the second lamp, and the fog goes out with the tide", 231)
        .reveal("lamp-2", 1, 98, 24, 2)
        .reveal("gull", 2, 110, 12, 3)
        .shot("4", "The ferry bell", 147)
        .shot("5", "Lamps along the wall", 210)
        .shot("6", "Shutters, one after the other", 64)
        .reveal("attic", 1, 30, 14, 1)
        .shot("6A", "The whole street", 95)
        .shot("7", "Lights out", 260)
        .finding(
            Finding.Severity.ERROR,
            Finding.Concerns.DIRECTOR,
            "3",
            "bar 12 beat 2",
            OptionalLong.of(630),
            "lamp-2 opens on layer 1 while the gull still covers it on layer 2",
            "let the gull leave before bar 12, or give lamp-2 another panel")
        .finding(
            Finding.Severity.WARNING,
            Finding.Concerns.ANIMATOR,
            "6",
            "bar 24",
            OptionalLong.of(1160),
            "the music leaves 30 frames and 14 photographs on twos need 28 with no hold before them,"
                + " so they are shown on ones",
            "ask for fewer photographs, or a longer panel")
        .finding(
            Finding.Severity.REMARK,
            Finding.Concerns.COMPOSER,
            "",
            "bar 33",
            OptionalLong.empty(),
            "glimmer 5 is strong and no panel is on it",
            "");
  }

  SampleFilm title(String is) {
    title = is;
    return this;
  }

  SampleFilm paper(Film.Paper is) {
    paper = is;
    return this;
  }

  /** The drawing of every panel. */
  SampleFilm drawing(Path photograph) {
    drawing = Optional.of(photograph);
    return this;
  }

  /** The first one is seen wherever something opens, the others nowhere. */
  SampleFilm performers(List<String> names) {
    performers = names;
    return this;
  }

  SampleFilm openings(List<String> names) {
    openings = names;
    return this;
  }

  SampleFilm shot(String name, String action, long frames) {
    scenes.add(new Scene(name, action, frames, new ArrayList<>()));
    return this;
  }

  /** A reveal in the last shot, fully open on a frame of the shot counted from 0. */
  SampleFilm reveal(String opening, int layer, long landsInShot, int photographs, int each) {
    scenes
        .get(scenes.size() - 1)
        .reveals()
        .add(new Asked(opening, layer, landsInShot, photographs, each));
    return this;
  }

  SampleFilm note(long frame, SheetNote.Column column, String text) {
    extraNotes.add(new SheetNote(frame, column, "", false, text));
    return this;
  }

  SampleFilm finding(
      Finding.Severity severity,
      Finding.Concerns concerns,
      String panel,
      String place,
      OptionalLong frame,
      String sentence,
      String remedy) {
    findings.add(new Finding(severity, concerns, panel, place, frame, sentence, remedy));
    return this;
  }

  public FilmSheet make() {
    long length = scenes.stream().mapToLong(Scene::frames).sum();
    FilmClock clock = new FilmClock(rate, 2L * rate.nominal(), Seconds.ZERO);
    int bars = (int) (length * BEATS_PER_MINUTE / 60 / rate.nominal() / 4) + 2;
    Music music = SampleMusic.of(bars, BEATS_PER_MINUTE);
    List<FilmBar> filmBars = SampleMusic.filmBars(music, clock);
    Plan plan = new SamplePlan(rate, title, paper, drawing, openings, performers).of(scenes);
    List<Cue> cues = new ArrayList<>();
    List<Shot> shots = new ArrayList<>();
    List<PlannedReveal> reveals = new ArrayList<>();
    long start = 0;
    for (int index = 0; index < scenes.size(); index++) {
      Scene scene = scenes.get(index);
      FrameSpan frames = new FrameSpan(start, start + scene.frames());
      Cue cue = SampleCues.cue(music, clock, scene, frames, cues.size());
      cues.add(cue);
      Shot shot = SampleShots.shot(index, plan.panels().get(index), cue, frames, music, clock);
      shots.add(shot);
      scene.reveals().forEach(asked -> reveals.add(SampleReveals.reveal(plan, shot, asked)));
      start += scene.frames();
    }
    cues.add(
        SampleCues.occurrence(music, clock, 99, Certainty.LIKELY, clock.musicStartFrame() + 40));
    cues.sort(Comparator.comparingLong(Cue::frame));
    TimingSheet timing =
        new TimingSheet(
            plan,
            music,
            clock,
            filmBars,
            TempoReport.EMPTY,
            cues,
            shots,
            length,
            List.of(
                new MotifTally("glimmer", "A", cues.size(), 1, cues.size() - 1),
                new MotifTally("tide", "B", 0, 0, 0)),
            findings);
    List<Movement> movements = SampleReveals.movements(plan, reveals);
    List<OpeningState> states = SampleShots.states(openings, shots, reveals);
    return new FilmSheet(
        List.of(
            new InputFile("plan", "sample.yaml", "91d2f3aa".repeat(8)),
            new InputFile("score", "sample.mid", "4be1c07a".repeat(8))),
        timing,
        reveals,
        movements,
        ShootingPlan.of(timing, movements, reveals, states),
        states,
        SampleReveals.appearances(plan, shots, reveals),
        List.of(),
        SampleNotes.of(timing, reveals, extraNotes),
        findings,
        Optional.empty());
  }
}
