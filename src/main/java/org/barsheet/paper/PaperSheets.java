package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.film.FilmSheet;

/** What a film needs on paper. */
public final class PaperSheets {

  private PaperSheets() {}

  /** The list of pieces, every piece, the artwork in tiles: to be cut, at true size. */
  public static List<PaperPage> cutting(FilmSheet film) {
    List<NeededPiece> pieces = NeededPiece.of(film);
    List<PaperPage> tiles = new ArtworkTiles(film).pages();
    List<PaperPage> pages = new ArrayList<>(new PieceList(film).pages(pieces, !tiles.isEmpty()));
    pages.addAll(new CuttingSheets(film).pages(pieces));
    pages.addAll(tiles);
    return pages;
  }

  /** A slate for each movement of each setup, in the order of work, two a page. */
  public static List<PaperPage> slates(FilmSheet film) {
    return new Slates(film).pages();
  }
}
