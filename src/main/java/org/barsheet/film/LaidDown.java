package org.barsheet.film;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidFilm.LaidBar;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.changes.LaidFilm.LaidExposure;
import org.barsheet.changes.LaidFilm.LaidInput;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.pulse.Music;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.timing.Shot;

/** Takes from a film sheet what later runs are compared with. */
final class LaidDown {

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
        sheet.timing().shots().stream().map(shot -> shot(sheet, shot)).toList());
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
