package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.artwork.Piece;
import org.barsheet.artwork.PieceSheet;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Rect;

/** Every piece at true size, a page or more each. */
final class CuttingSheets {

  private final FilmSheet film;

  CuttingSheets(FilmSheet film) {
    this.film = film;
  }

  /** The pages of all pieces, in the order of work. */
  List<PaperPage> pages(List<NeededPiece> pieces) {
    List<PaperPage> pages = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      for (PieceSheet sheet : pieces.get(i).piece().sheets()) {
        String place = "piece " + (i + 1) + " of " + pieces.size();
        pages.addAll(pages(pieces.get(i), sheet, place));
      }
    }
    return pages;
  }

  private List<PaperPage> pages(NeededPiece needed, PieceSheet sheet, String place) {
    PieceDrawing drawing = new PieceDrawing(needed, sheet);
    Rect bounds = drawing.bounds();
    String name = needed.name() + " " + sheet.title();
    String title = "Cutting sheet · " + needed.name() + " · " + sheet.title();
    String facts = facts(needed, place);
    Sheet whole = new Sheet(film);
    if (bounds.width() <= whole.bodyWidth() && bounds.height() <= whole.bodyHeight()) {
      double right = (whole.width() - bounds.width()) / 2 - bounds.left();
      double down = Sheet.TOP - bounds.top();
      drawing.drawn().forEach(ink -> whole.add(ink.moved(right, down)));
      return List.of(whole.page(name, title, facts));
    }
    return tiled(film, sheet.board(), drawing.drawnLarge(), name, title, facts);
  }

  private static String facts(NeededPiece needed, String place) {
    Piece piece = needed.piece();
    Artwork.Model model = piece.scale().model();
    String enlarged = model.enlarged() == 1 ? "" : " × " + Millimeters.of(model.enlarged());
    return "model "
        + model.name()
        + enlarged
        + " · "
        + place
        + " · "
        + needed.cut()
        + (needed.uses().size() == 1 ? " · setup " : " · setups ")
        + String.join(", ", needed.uses());
  }

  /** Whether some sheet of a piece would take too many pages to join, so that none is printed. */
  static boolean isTooLarge(FilmSheet film, Piece piece) {
    return piece.sheets().stream().anyMatch(sheet -> tiles(film, sheet.board()).isTooMany());
  }

  static Tiles tiles(FilmSheet film, Rect bounds) {
    Sheet sheet = new Sheet(film);
    return new Tiles(bounds, sheet.bodyWidth(), sheet.bodyHeight());
  }

  /** A drawing on as many pages as it needs; on none where they would be too many to join. */
  static List<PaperPage> tiled(
      FilmSheet film, Rect bounds, List<Ink> drawn, String name, String title, String facts) {
    Tiles tiles = tiles(film, bounds);
    List<PaperPage> pages = new ArrayList<>();
    if (tiles.isTooMany()) {
      return pages;
    }
    for (int row = 0; row < tiles.rows(); row++) {
      for (int column = 0; column < tiles.columns(); column++) {
        Sheet sheet = new Sheet(film);
        tiles.tile(row, column, drawn, Sheet.MARGIN, Sheet.TOP).forEach(sheet::add);
        String tile = Tiles.name(row, column);
        String last = Tiles.name(tiles.rows() - 1, tiles.columns() - 1);
        pages.add(
            sheet.page(
                name + " " + tile,
                title + " · tile " + tile,
                "tiles A1 to " + last + " · " + facts));
      }
    }
    return pages;
  }
}
