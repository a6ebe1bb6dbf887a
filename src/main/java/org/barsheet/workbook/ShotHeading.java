package org.barsheet.workbook;

import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/** The two lines over the frames of a shot. */
final class ShotHeading {

  private final Book book;
  private final SheetPen pen;
  private final ExposureColumns columns;

  ShotHeading(Book book, SheetFrame frame) {
    this.book = book;
    this.pen = frame.pen();
    this.columns = book.exposureColumns();
  }

  /** The line with the name of the shot and of the openings on its layers. */
  void name(Shot shot, List<LayerTrack> tracks, boolean continued) {
    pen.blanks(0, columns.rowName(), ExposureLooks.SHOT);
    String name = "Shot " + shot.panel().name() + "  " + shot.panel().action();
    pen.text(0, continued ? name + ", continued" : name, ExposureLooks.SHOT);
    pen.link(0, TimelineWorksheet.addressOf(shot));
    for (int layer = 0; layer < tracks.size(); layer++) {
      String openings = openings(tracks.get(layer));
      Look look = ExposureLooks.SHOT.size(9);
      pen.text(columns.picture(layer), openings, look);
      pen.join(columns.picture(layer), columns.picture(layer) + 1);
    }
    pen.join(0, columns.picture(0) - 1);
  }

  private static String openings(LayerTrack track) {
    return track.reveals().stream()
        .map(reveal -> reveal.opening().name())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** The line with its place and length, and how its openings move. */
  void details(Shot shot, List<LayerTrack> tracks) {
    pen.blanks(0, columns.rowName(), ExposureLooks.DETAILS);
    pen.text(0, details(shot), ExposureLooks.DETAILS);
    for (int layer = 0; layer < tracks.size(); layer++) {
      pen.text(columns.picture(layer), movement(tracks.get(layer)), ExposureLooks.DETAILS);
      pen.join(columns.picture(layer), columns.picture(layer) + 1);
    }
    pen.join(0, columns.picture(0) - 1);
  }

  private String details(Shot shot) {
    Film film = book.film().timing().plan().film();
    long frames = shot.frames().length();
    return "from "
        + shot.startsAt()
        + "   "
        + Words.count(frames, "frame")
        + ", "
        + Words.duration(film, frames)
        + "   last film frame "
        + (shot.frames().endExclusive() - 1);
  }

  private static String movement(LayerTrack track) {
    return track.reveals().stream()
        .map(ShotHeading::movement)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String movement(PlannedReveal reveal) {
    int framesPerPicture =
        reveal
            .squeeze()
            .map(PlannedReveal.Squeeze::framesPerPicture)
            .orElse(reveal.reveal().framesPerPicture());
    return Words.shown(framesPerPicture) + ", lands " + reveal.landsFrame();
  }
}
