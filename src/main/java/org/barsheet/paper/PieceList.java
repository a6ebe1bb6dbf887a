package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.artwork.Piece;
import org.barsheet.artwork.PieceSheet;
import org.barsheet.film.FilmSheet;
import org.barsheet.paper.Ink.Words;

/** The list of pieces: what to cut, how large, how often, and for which setups. */
final class PieceList {

  private static final double ROW = 10;
  private static final double HEADING = 7;
  private static final List<Double> COLUMNS = List.of(0.0, 48.0, 80.0, 112.0, 140.0);
  private static final List<String> HEADINGS =
      List.of("piece", "model", "hole", "cut", "for setups");

  private final FilmSheet film;

  PieceList(FilmSheet film) {
    this.film = film;
  }

  /**
   * A page or more; none without pieces.
   *
   * @param isTiled whether the artwork itself is printed in tiles
   */
  List<PaperPage> pages(List<NeededPiece> pieces, boolean isTiled) {
    int most = (int) ((new Sheet(film).bodyHeight() - HEADING) / ROW);
    List<PaperPage> pages = new ArrayList<>();
    for (int from = 0; from < pieces.size(); from += most) {
      Sheet sheet = new Sheet(film);
      headings(sheet);
      List<NeededPiece> here = pieces.subList(from, Math.min(from + most, pieces.size()));
      for (int i = 0; i < here.size(); i++) {
        row(sheet, here.get(i), from + i + 1, Sheet.TOP + HEADING + i * ROW);
      }
      String name = "pieces" + (pages.isEmpty() ? "" : " " + (pages.size() + 1));
      pages.add(sheet.page(name, "List of pieces", total(pieces, isTiled)));
    }
    return pages;
  }

  private static String total(List<NeededPiece> pieces, boolean isTiled) {
    int cut = pieces.stream().mapToInt(piece -> piece.count() + 1).sum();
    return pieces.size()
        + (pieces.size() == 1 ? " kind" : " kinds")
        + ", "
        + cut
        + " to cut, spares with them; "
        + (isTiled
            ? "those of the artwork itself are on its tiles"
            : "the artwork is too large to print in tiles");
  }

  private static void headings(Sheet sheet) {
    for (int column = 0; column < COLUMNS.size(); column++) {
      sheet.add(
          Words.bold(Sheet.MARGIN + COLUMNS.get(column), Sheet.TOP + 3, 9, HEADINGS.get(column)));
    }
  }

  private void row(Sheet sheet, NeededPiece needed, int number, double y) {
    Piece piece = needed.piece();
    double x = Sheet.MARGIN;
    sheet.add(new Ink.Line(Stroke.SIZE, x, y - 2, sheet.width() - Sheet.MARGIN, y - 2));
    sheet.add(Words.bold(x, y + 2, 9, number + "  " + needed.name()).within(46));
    String motion =
        piece.sheets().stream().map(PieceSheet::title).collect(Collectors.joining(" and "))
            + toward(piece);
    sheet.add(Words.plain(x + 4, y + 6, motion).inGray().within(43));
    sheet.add(Words.plain(x + COLUMNS.get(1), y + 2, piece.scale().model().name()).within(31));
    sheet.add(
        Words.plain(x + COLUMNS.get(2), y + 2, Millimeters.of(piece.width(), piece.height()))
            .within(31));
    sheet.add(
        Words.plain(
            x + COLUMNS.get(3),
            y + 2,
            needed.count() == 0 ? "1 spare" : needed.count() + " + 1 spare"));
    double rest = sheet.bodyWidth() - COLUMNS.get(4);
    sheet.add(
        Words.plain(x + COLUMNS.get(4), y + 2, String.join(", ", needed.uses())).within(rest));
    List<String> remarks = remarks(needed);
    if (!remarks.isEmpty()) {
      sheet.add(
          Words.plain(x + COLUMNS.get(1), y + 6, String.join("; ", remarks))
              .inGray()
              .within(sheet.bodyWidth() - COLUMNS.get(1)));
    }
  }

  private List<String> remarks(NeededPiece needed) {
    List<String> remarks = new ArrayList<>();
    if (CuttingSheets.isTooLarge(film, needed.piece())) {
      remarks.add("too large to print in tiles: draw it by its sizes");
    }
    if (needed.openings().size() > 1) {
      remarks.add(
          "also for " + String.join(", ", needed.openings().subList(1, needed.openings().size())));
    }
    return remarks;
  }

  private static String toward(Piece piece) {
    return piece.toward().isEmpty() ? "" : ", " + piece.toward();
  }
}
