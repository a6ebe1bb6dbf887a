package org.barsheet.frames;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.barsheet.artwork.Framing;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Rect;
import org.barsheet.timing.Shot;

/**
 * Every frame of a film as it is planned: the one description that the page, the movie and the
 * editor's tables show.
 */
public final class FilmFrames {

  private final FilmSheet sheet;
  private final Rect artwork;
  private final Photographs photographs;
  private final Openings openings;
  private final Strips strips;
  private final List<ShotView> views;

  private FilmFrames(FilmSheet sheet, Predicate<Path> canBeShown) {
    this.sheet = sheet;
    Artwork paper = sheet.plan().workshop().artwork();
    this.artwork = new Rect(0, 0, paper.squaresWide(), paper.squaresHigh());
    this.photographs = new Photographs(sheet);
    this.openings = new Openings(sheet, photographs);
    this.strips = new Strips(sheet);
    ShotDrawings drawings = new ShotDrawings(sheet, artwork, canBeShown);
    this.views = sheet.timing().shots().stream().map(shot -> view(shot, drawings)).toList();
  }

  /**
   * The frames of a film.
   *
   * @param canBeShown whether a drawing's file can be read where the frames are to be seen
   */
  public static FilmFrames of(FilmSheet sheet, Predicate<Path> canBeShown) {
    return new FilmFrames(sheet, canBeShown);
  }

  private ShotView view(Shot shot, ShotDrawings drawings) {
    return new ShotView(
        shot,
        Framing.of(sheet.timing(), shot),
        drawings.whole(shot).flatMap(drawings::own),
        ShotDrawings.moves(shot) ? Optional.empty() : drawings.own(shot),
        drawings.looksAt(shot).isEmpty() && openings.shapes().isEmpty(),
        openings.standing(shot),
        drawings.asDrawn(shot));
  }

  /** The film they belong to. */
  public FilmSheet film() {
    return sheet;
  }

  /** How every opening is drawn, in the plan's order. */
  public List<OpeningShape> shapes() {
    return openings.shapes();
  }

  /** What stays the same throughout a shot. */
  public ShotView view(Shot shot) {
    return views.get(shot.index());
  }

  /**
   * A frame of the film.
   *
   * @param frame 0 to the film's length less 1
   */
  public FilmFrame at(long frame) {
    return in(view(sheet.timing().shotAt(frame).orElseThrow()), frame);
  }

  /** A frame of a shot. */
  private FilmFrame in(ShotView view, long frame) {
    Shot shot = view.shot();
    Rect field = view.framing().map(framing -> framing.fieldAt(frame)).orElse(artwork);
    return new FilmFrame(
        shot,
        field,
        new Plate(
            photographs.ofPlate(shot),
            photographs.plateCrop(shot, frame),
            view.whole(),
            view.own().map(file -> new Plate.Placed(file, field)),
            view.nothingDrawn()),
        openings.at(view, frame),
        strips.at(shot, frame));
  }
}
