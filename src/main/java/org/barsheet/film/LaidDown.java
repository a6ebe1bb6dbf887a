package org.barsheet.film;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.barsheet.changes.LaidAsk;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidFilm.LaidAppearance;
import org.barsheet.changes.LaidFilm.LaidBar;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.changes.LaidFilm.LaidExposure;
import org.barsheet.changes.LaidFilm.LaidInput;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.changes.LaidMusic;
import org.barsheet.changes.PlanAsks;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmClock;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.timing.Shot;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/** Takes from a film what later runs are compared with. */
public final class LaidDown {

  /** Decimals of a beat and of a share of a movement. */
  private static final int DECIMALS = 6;

  private LaidDown() {}

  /** What this run laid down. */
  static LaidFilm of(FilmSheet sheet) {
    return new LaidFilm(
        sheet.plan().title(),
        sheet.timing().clock().rate(),
        sheet.plan().film().firstFrame(),
        sheet.timing().lengthFrames(),
        sheet.inputs().stream().map(in -> new LaidInput(in.name(), in.sha256())).toList(),
        Optional.of(ScoreNotes.of(sheet.timing().music())),
        sheet.timing().bars().stream().map(LaidDown::bar).toList(),
        sheet.timing().cues().stream().map(cue -> cue(cue, sheet.timing().music())).toList(),
        sheet.timing().shots().stream().map(shot -> shot(sheet, shot)).toList(),
        asks(sheet.timing()),
        sheet.appearances().stream().map(seen -> appearance(sheet, seen)).toList(),
        sheet.changes().map(changes -> changes.otherMusic().unresolved()).orElse(List.of()),
        SoundLayout.of(sheet.timing()).headSeconds(),
        sheet.issued().laid(),
        sheet.ticks().likenesses());
  }

  /**
   * What a plan means by its places in this music, even where its panels cannot stand together.
   *
   * @param returns every return of the plan's motifs
   */
  public static LaidMusic music(Plan plan, Music music, List<Occurrence> returns) {
    MusicRuler ruler = new MusicRuler(music, FilmClock.of(plan.film(), music));
    List<LaidCue> cues =
        new Cues(music, ruler, returns)
            .with(List.of()).stream().map(cue -> cue(cue, music)).toList();
    return new LaidMusic(
        Optional.of(ScoreNotes.of(music)),
        cues,
        PlanAsks.of(plan, music, returns, Map.of()),
        Map.of());
  }

  private static List<LaidAsk> asks(TimingSheet timing) {
    List<Occurrence> returns =
        timing.cues().stream().flatMap(cue -> cue.occurrence().stream()).toList();
    Map<String, Cue> got = new LinkedHashMap<>();
    timing.shots().forEach(shot -> got.put(shot.panel().name(), shot.cue()));
    return PlanAsks.of(timing.plan(), timing.music(), returns, got);
  }

  private static LaidAppearance appearance(FilmSheet sheet, Appearance seen) {
    String panel = sheet.timing().shots().get(seen.shot()).panel().name();
    return new LaidAppearance(
        seen.performer().name(),
        seen.opening().name(),
        panel,
        seen.frames(),
        seen.performer().part());
  }

  private static LaidBar bar(FilmBar bar) {
    return new LaidBar(bar.bar().number(), bar.startFrame());
  }

  private static LaidCue cue(Cue cue, Music music) {
    return new LaidCue(
        cue.id(),
        cue.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        cue.name(),
        cue.number(),
        cue.place().bar(),
        new BigDecimal(cue.place().beatText()),
        cue.at(),
        cue.frame(),
        cue.formWords(),
        cue.occurrence().map(occurrence -> ScoreNotes.held(occurrence, music)));
  }

  private static LaidShot shot(FilmSheet sheet, Shot shot) {
    List<LaidReveal> reveals = sheet.revealsOf(shot).stream().map(LaidDown::reveal).toList();
    return new LaidShot(shot.panel().name(), shot.cue().id(), shot.frames(), reveals);
  }

  private static LaidReveal reveal(PlannedReveal reveal) {
    return new LaidReveal(
        reveal.opening().name(),
        reveal.opening().model(),
        reveal.layer(),
        reveal.accentFrame(),
        reveal.landsFrame(),
        reveal.firstGapFrame(),
        reveal.exposures().stream().map(LaidDown::exposure).toList());
  }

  private static LaidExposure exposure(Exposure exposure) {
    BigDecimal progress = BigDecimal.valueOf(exposure.progress());
    return new LaidExposure(
        exposure.frames(),
        exposure.photograph().name(),
        progress.setScale(DECIMALS, RoundingMode.HALF_UP));
  }
}
