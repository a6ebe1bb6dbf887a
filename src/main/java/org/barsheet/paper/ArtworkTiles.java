package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.artwork.Piece;
import org.barsheet.artwork.PieceMark;
import org.barsheet.artwork.Rects;
import org.barsheet.film.FilmSheet;
import org.barsheet.paper.Ink.Align;
import org.barsheet.paper.Ink.Words;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;

/** The artwork itself at true size, on pages that are joined. */
final class ArtworkTiles {

  /** Squares between two places of the graph paper that are told by their numbers. */
  private static final int NUMBERED = 4;

  /** Lines of the graph paper are drawn at least so far apart. */
  private static final double LEAST_APART = 2;

  private static final double PLACE_WIDTH = 12;
  private static final double PLACE_HEIGHT = 4;

  /** Names of openings reach so far above and beside them. */
  private static final double NAMES = 9;

  private final FilmSheet film;
  private final Artwork artwork;
  private final List<Ink> inks = new ArrayList<>();

  ArtworkTiles(FilmSheet film) {
    this.film = film;
    this.artwork = film.plan().workshop().artwork();
  }

  /** None where nothing opens in it, or where they would be too many to join. */
  List<PaperPage> pages() {
    Rect whole =
        new Rect(
            0,
            0,
            artwork.squaresWide() * artwork.squareMillimeters(),
            artwork.squaresHigh() * artwork.squareMillimeters());
    if (film.plan().workshop().openings().isEmpty()
        || CuttingSheets.tiles(film, whole).isTooMany()) {
      return List.of();
    }
    squares(whole);
    film.plan().workshop().openings().forEach(this::opening);
    String facts =
        "all of it "
            + Millimeters.of(whole.width(), whole.height())
            + " · squares of "
            + Millimeters.of(artwork.squareMillimeters())
            + " mm, numbered across and down · tiles overlap "
            + Millimeters.of(Tiles.OVERLAP)
            + " mm";
    return CuttingSheets.tiled(film, whole, inks, "artwork", "Artwork at true size", facts);
  }

  private void squares(Rect whole) {
    double square = artwork.squareMillimeters();
    int step = (int) Math.ceil(LEAST_APART / square);
    for (long at = 0; at <= artwork.squaresWide(); at += step) {
      inks.add(new Ink.Line(Stroke.GRID, at * square, 0, at * square, whole.height()));
    }
    for (long at = 0; at <= artwork.squaresHigh(); at += step) {
      inks.add(new Ink.Line(Stroke.GRID, 0, at * square, whole.width(), at * square));
    }
    int numbered = NUMBERED * (int) Math.ceil(PLACE_WIDTH / (NUMBERED * square));
    for (int x = 0; x < artwork.squaresWide(); x += numbered) {
      for (int y = 0; y < artwork.squaresHigh(); y += numbered) {
        place(x, y);
      }
    }
    PieceDrawing.around(Stroke.TRIM, whole).forEach(inks::add);
  }

  /** The numbers of a square in its corner, unless an opening or its name is in the way. */
  private void place(int x, int y) {
    double square = artwork.squareMillimeters();
    Rect words = new Rect(x, y, PLACE_WIDTH / square, PLACE_HEIGHT / square);
    for (Opening opening : film.plan().workshop().openings()) {
      Rect rect = opening.rect();
      double names = NAMES / square;
      Rect named =
          new Rect(
              rect.left() - names,
              rect.top() - names,
              rect.width() + 2 * names,
              rect.height() + names);
      if (Rects.meet(words, named)) {
        return;
      }
    }
    String place = x + ", " + y;
    inks.add(new Words(place, x * square + 1, y * square + 3.5, 8, false, Align.START, 0, true));
  }

  /** Cut here only what is photographed in the artwork itself. */
  private void opening(Opening opening) {
    double square = artwork.squareMillimeters();
    double left = opening.rect().left() * square;
    double top = opening.rect().top() * square;
    double width = opening.rect().width() * square;
    double height = opening.rect().height() * square;
    Artwork.Model model = artwork.model(opening.model()).orElseThrow();
    double middle = left + width / 2;
    if (model.enlarged() == 1) {
      for (PieceMark mark : Piece.of(opening, artwork).sheets().get(0).marks()) {
        if (mark.kind() != PieceMark.Kind.TRIM) {
          PieceDrawing.inks(mark).forEach(ink -> inks.add(ink.moved(left, top)));
        }
      }
      inks.add(new Words(opening.name(), middle, top - 2, 9, true, Align.MIDDLE, 0, false));
    } else {
      PieceDrawing.around(Stroke.HIDDEN, new Rect(left, top, width, height)).forEach(inks::add);
      inks.add(new Words(opening.name(), middle, top - 5.5, 9, true, Align.MIDDLE, 0, false));
      String on = "on model " + model.name();
      inks.add(new Words(on, middle, top - 2, 8, false, Align.MIDDLE, 0, false));
    }
  }
}
