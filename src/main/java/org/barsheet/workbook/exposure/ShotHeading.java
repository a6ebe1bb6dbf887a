package org.barsheet.workbook.exposure;

import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Reveal;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.Columns;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.TextWidth;

/**
 * The lines over the frames of a shot: its name and the openings on its layers; its place and how
 * the openings move; what stays the same throughout. Where the shot goes on from another page, the
 * first two say so.
 */
final class ShotHeading {

  private static final double NAME_POINTS = 17;
  private static final double DETAILS_POINTS = 12.5;

  private static final Look NAME = ExposureLooks.SHOT.wrapped();
  private static final Look OPENINGS = ExposureLooks.SHOT.size(9).wrapped();
  private static final Look DETAILS = ExposureLooks.DETAILS.wrapped();
  private static final Look DETAILS_ABOVE = DETAILS.edged(Edges.NONE);

  private final ShotDetails details;
  private final ExposureColumns columns;
  private final Shot shot;
  private final List<LayerTrack> tracks;
  private final long firstFrame;

  /**
   * The heading over a page of a shot.
   *
   * @param firstFrame the first film frame below it
   */
  ShotHeading(
      ShotDetails details,
      ExposureColumns columns,
      Shot shot,
      List<LayerTrack> tracks,
      long firstFrame) {
    this.details = details;
    this.columns = columns;
    this.shot = shot;
    this.tracks = tracks;
    this.firstFrame = firstFrame;
  }

  /** Height of the first line in points. */
  double nameHeight(Columns widths) {
    double height =
        lineHeight(
            name(),
            NAME,
            widths.points(ExposureColumns.TIMECODE, columns.photograph(0)),
            NAME_POINTS);
    for (int layer = 0; layer < tracks.size(); layer++) {
      double room = widths.points(columns.photograph(layer), columns.photograph(layer) + 2);
      height = Math.max(height, lineHeight(openings(layer), OPENINGS, room, NAME_POINTS));
    }
    return height;
  }

  /** Height of the second line in points. */
  double detailsHeight(Columns widths) {
    double room = widths.points(0, columns.photograph(0));
    double height = lineHeight(details.length(shot), DETAILS, room, DETAILS_POINTS);
    for (int layer = 0; layer < tracks.size(); layer++) {
      double layerRoom = widths.points(columns.photograph(layer), columns.photograph(layer) + 2);
      height = Math.max(height, lineHeight(movement(layer), DETAILS, layerRoom, DETAILS_POINTS));
    }
    return height;
  }

  private static double lineHeight(String text, Look look, double room, double least) {
    int lines = TextWidth.lines(text, look, room);
    return lines > 1 ? Math.max(least, TextWidth.height(lines, look.points())) : least;
  }

  /** Writes the first line into the pen's row. */
  void writeName(SheetPen pen) {
    pen.blanks(0, columns.panel(), ExposureLooks.SHOT);
    pen.text(0, "Shot " + shot.panel().name(), NAME.unwrapped().in(Ink.QUAY));
    pen.link(0, SheetPlaces.ofShot(shot));
    pen.joined(ExposureColumns.TIMECODE, columns.photograph(0) - 1, name(), NAME);
    for (int layer = 0; layer < tracks.size(); layer++) {
      pen.joined(
          columns.photograph(layer), columns.photograph(layer) + 1, openings(layer), OPENINGS);
    }
    pen.rowName(columns.rowName(), rowName("heading"));
  }

  /** The permanent name of a line; on further pages it changes with the page's first frame. */
  private String rowName(String line) {
    String name = "panel " + shot.panel().name() + " " + line;
    return goesOn() ? name + " from " + (firstFrame - shot.frames().start() + 1) : name;
  }

  /** Height of the third line in points. */
  double throughoutHeight(Columns widths) {
    double room = widths.points(0, columns.panel());
    return lineHeight(details.throughout(shot), DETAILS, room, DETAILS_POINTS);
  }

  /** Writes the third line into the pen's row. */
  void writeThroughout(SheetPen pen) {
    pen.joined(0, columns.panel() - 1, details.throughout(shot), DETAILS);
    pen.rowName(columns.rowName(), rowName("throughout"));
  }

  /** Writes the second line into the pen's row. */
  void writeDetails(SheetPen pen) {
    Look look = goesOn() ? DETAILS : DETAILS_ABOVE;
    pen.blanks(0, columns.panel(), look);
    pen.joined(0, columns.photograph(0) - 1, details.length(shot), look);
    for (int layer = 0; layer < tracks.size(); layer++) {
      pen.joined(columns.photograph(layer), columns.photograph(layer) + 1, movement(layer), look);
    }
    pen.rowName(columns.rowName(), rowName("details"));
  }

  private boolean goesOn() {
    return firstFrame > shot.frames().start();
  }

  private String name() {
    String action = shot.panel().action();
    return goesOn() ? action + (action.isEmpty() ? "continued" : ", continued") : action;
  }

  private String openings(int layer) {
    return tracks.get(layer).reveals().stream()
        .map(reveal -> reveal.opening().name())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private String movement(int layer) {
    LayerTrack track = tracks.get(layer);
    if (goesOn() && !track.isEmpty()) {
      Exposure exposure = track.at(firstFrame);
      if (exposure.frames().start() < firstFrame) {
        return "on from " + exposure.photograph().name();
      }
    }
    return track.reveals().stream()
        .map(ShotHeading::movement)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String movement(PlannedReveal reveal) {
    int framesPerPhotograph =
        reveal
            .squeeze()
            .map(PlannedReveal.Squeeze::framesPerPhotograph)
            .orElse(reveal.reveal().framesPerPhotograph());
    boolean whole = reveal.reveal().lands() == Reveal.Lands.FULLY_OPEN;
    String how = whole ? "lands " : reveal.landing() + " on ";
    boolean borrows = !reveal.movement().equals(reveal.opening().name());
    return (borrows ? "photographs of " + reveal.movement() + ", " : "")
        + SheetWords.shown(framesPerPhotograph)
        + ", "
        + how
        + reveal.landsFrame();
  }
}
