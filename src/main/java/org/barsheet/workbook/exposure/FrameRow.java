package org.barsheet.workbook.exposure;

import java.util.List;
import org.barsheet.clock.Timecode;
import org.barsheet.exposure.Exposure;
import org.barsheet.film.SheetNote.Column;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureLooks.Ground;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.Signs;

/** Writes the row of one frame. */
final class FrameRow {

  private final Film film;
  private final FrameNotes notes;
  private final ShotDetails details;
  private final ExposureColumns columns;
  private final SheetPen pen;

  FrameRow(
      Film film, ExposureColumns columns, FrameNotes notes, ShotDetails details, SheetPen pen) {
    this.film = film;
    this.details = details;
    this.notes = notes;
    this.columns = columns;
    this.pen = pen;
  }

  /**
   * Writes a film frame of a shot into the present row.
   *
   * @param ownNotes whether notes can be written beside it; else they are those of the row above
   */
  void write(Shot shot, long frame, List<LayerTrack> tracks, boolean ownNotes) {
    Timecode timecode = film.timecode(frame);
    long inShot = frame - shot.frames().start() + 1;
    Ground ground = Ground.of(timecode, notes.lands(frame), inShot == 1);
    Look letters = ground.look(ExposureLooks.LETTERS);
    Look quiet = ground.look(ExposureLooks.LETTERS.in(Ink.PENCIL));
    pen.number(ExposureColumns.SHOT_FRAME, inShot, letters.number(Look.WHOLE));
    pen.number(ExposureColumns.FILM_FRAME, frame, quiet.number(Look.WHOLE));
    pen.text(
        ExposureColumns.TIMECODE,
        timecode.toString(),
        (timecode.frames() == 0 ? letters : quiet).centered());
    words(frame, ground);
    for (int layer = 0; layer < tracks.size(); layer++) {
      photograph(columns.photograph(layer), tracks.get(layer), frame, ground);
    }
    Look theirs = ExposureLooks.toFillIn(ground);
    if (begins(shot, frame, tracks)) {
      pen.toFillIn(columns.tick(), theirs);
    } else {
      pen.blank(columns.tick(), letters);
    }
    if (ownNotes) {
      pen.toFillIn(columns.notes(), theirs);
    } else {
      pen.blank(columns.notes(), theirs);
    }
    pen.label(columns.panel(), shot.panel().name(), Look.PENCIL.size(8));
    pen.text(columns.camera(), details.camera(shot, frame), Look.PENCIL.size(8));
    pen.rowName(columns.rowName(), rowName(shot, inShot));
  }

  /** Whether something is put under the camera on a frame: it has a tick of its own. */
  boolean begins(Shot shot, long frame, List<LayerTrack> tracks) {
    return frame == shot.frames().start()
        || tracks.stream()
            .anyMatch(track -> !track.isEmpty() && track.at(frame).frames().start() == frame);
  }

  /** The permanent name of a frame: it moves with its shot. */
  static String rowName(Shot shot, long inShot) {
    return "panel " + shot.panel().name() + " frame " + inShot;
  }

  private void words(long frame, Ground ground) {
    String beat = notes.text(frame, Column.BEAT);
    Look bold = ground.look(ExposureLooks.LETTERS.inBold());
    Look letters = ground.look(ExposureLooks.LETTERS);
    pen.text(ExposureColumns.BEAT, beat, beat.startsWith("bar") ? bold : letters);
    pen.text(ExposureColumns.MOTIF, notes.motifs(frame), bold);
    words(ExposureColumns.SOUND, frame, Column.SOUND, ground);
    words(ExposureColumns.ACTION, frame, Column.ACTION, ground);
  }

  private void words(int column, long frame, Column words, Ground ground) {
    boolean marked = notes.isMarked(frame, words);
    Look letters = marked ? ExposureLooks.LETTERS.inBold() : ExposureLooks.LETTERS;
    pen.text(column, notes.text(frame, words), ground.look(letters).wrapped());
  }

  private void photograph(int column, LayerTrack track, long frame, Ground ground) {
    Look letters = ground.look(ExposureLooks.LETTERS);
    if (track.isEmpty()) {
      pen.blank(column, letters).blank(column + 1, letters);
      return;
    }
    Exposure exposure = track.at(frame);
    if (exposure.frames().start() != frame) {
      pen.text(column, Signs.HOLD, ExposureLooks.hold(ground));
      pen.blank(column + 1, letters);
      return;
    }
    pen.text(column, exposure.photograph().name(), letters);
    pen.number(column + 1, 100 * exposure.progress(), letters.number(Look.PERCENT));
  }
}
