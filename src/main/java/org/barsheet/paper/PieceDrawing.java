package org.barsheet.paper;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.barsheet.artwork.PieceMark;
import org.barsheet.artwork.PieceSheet;
import org.barsheet.artwork.Rects;
import org.barsheet.paper.Ink.Align;
import org.barsheet.paper.Ink.Words;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Rect;

/** One sheet of a piece, drawn in millimeters from its hole's top left corner. */
final class PieceDrawing {

  private static final String FRONT =
      "Front: this side to the camera. Lay it on the card and cut through both.";

  private static final double ABOVE = 6;
  private static final double BESIDE = 12;
  private static final double BELOW = 12;
  private static final double LINE = 4.4;
  private static final double RING = 1.5;

  /** Width of a line where one is asked for. */
  private static final double DUST = 1e-6;

  private final NeededPiece needed;
  private final PieceSheet sheet;
  private final List<String> notes;
  private final List<Ink> inks = new ArrayList<>();

  PieceDrawing(NeededPiece needed, PieceSheet sheet) {
    this.needed = needed;
    this.sheet = sheet;
    this.notes = PieceNotes.of(needed.piece(), sheet);
  }

  /** All of it, its sizes and notes around it. */
  Rect bounds() {
    Rect board = sheet.board();
    return new Rect(
        board.left(),
        board.top() - ABOVE,
        board.width() + BESIDE,
        board.height() + ABOVE + BELOW + LINE * notes.size());
  }

  /** Drawn with its sizes and notes around it. */
  List<Ink> drawn() {
    outline();
    Rect board = sheet.board();
    inks.add(Words.plain(board.left(), board.top() - 2, FRONT).inGray());
    sizes();
    notes(board.left(), board.top() + board.height() + BELOW + 2.5, notes);
    return List.copyOf(inks);
  }

  /** Drawn with its sizes and notes inside, for a piece larger than a page. */
  List<Ink> drawnLarge() {
    outline();
    Rect measured = measured();
    List<String> lines = new ArrayList<>();
    lines.add(FRONT);
    lines.add(Millimeters.of(measured.width(), measured.height()));
    lines.addAll(notes);
    notes(measured.left() + 6, measured.top() + 22, lines);
    return List.copyOf(inks);
  }

  private void outline() {
    sheet.marks().forEach(mark -> inks.addAll(inks(mark)));
    name();
    if (needed.piece().opening().motion() instanceof Hinged hinged) {
      edges(hinged.hinge());
      sheet.marks().forEach(mark -> label(mark, hinged.hinge()));
    }
  }

  private void notes(double x, double y, List<String> lines) {
    for (int line = 0; line < lines.size(); line++) {
      inks.add(Words.plain(x, y + line * LINE, lines.get(line)));
    }
  }

  /** What a mark looks like: most are a line. */
  static List<Ink> inks(PieceMark mark) {
    return switch (mark.kind()) {
      case CUT -> List.of(line(Stroke.CUT, mark));
      case TRIM -> List.of(line(Stroke.TRIM, mark));
      case CREASE -> List.of(line(Stroke.CREASE, mark));
      case RAIL -> List.of(line(Stroke.RAIL, mark));
      case HIDDEN -> List.of(line(Stroke.HIDDEN, mark));
      case THREAD -> List.of(new Ink.Ring(Stroke.THREAD, mark.fromX(), mark.fromY(), RING));
      case PUTTY -> box(mark);
    };
  }

  private static Ink line(Stroke stroke, PieceMark mark) {
    return new Ink.Line(stroke, mark.fromX(), mark.fromY(), mark.toX(), mark.toY());
  }

  private static List<Ink> box(PieceMark mark) {
    double width = mark.toX() - mark.fromX();
    double height = mark.toY() - mark.fromY();
    return around(Stroke.PUTTY, new Rect(mark.fromX(), mark.fromY(), width, height));
  }

  /** The sides of a rectangle. */
  static List<Ink> around(Stroke stroke, Rect rect) {
    double right = rect.left() + rect.width();
    double bottom = rect.top() + rect.height();
    return List.of(
        new Ink.Line(stroke, rect.left(), rect.top(), right, rect.top()),
        new Ink.Line(stroke, right, rect.top(), right, bottom),
        new Ink.Line(stroke, right, bottom, rect.left(), bottom),
        new Ink.Line(stroke, rect.left(), bottom, rect.left(), rect.top()));
  }

  /** In the hole, its arrow toward the top of the artwork; above it where the hole is too small. */
  private void name() {
    double width = needed.piece().width();
    Words words =
        new Words(
            "▲ " + needed.name(),
            width / 2,
            Math.min(12, needed.piece().height() / 2),
            14,
            true,
            Align.MIDDLE,
            0,
            true);
    inks.add(
        words.isTooLongFor(width - 4)
            ? new Words("▲", width / 2, needed.piece().height() / 2, 8, true, Align.MIDDLE, 0, true)
            : words.within(width - 4));
  }

  /** Along the hinge and along the edge across from it, in the paper around the hole. */
  private void edges(Side hinge) {
    double width = needed.piece().width();
    double height = needed.piece().height();
    String crease = "hinge: crease, do not cut";
    String free = "free edge: cut";
    switch (hinge) {
      case LEFT -> {
        along(crease, -3, height / 2, 90, height);
        along(free, width + 5, height / 4, 90, height);
      }
      case RIGHT -> {
        along(crease, width + 5, height / 2, 90, height);
        along(free, -3, height / 4, 90, height);
      }
      case TOP -> {
        along(crease, width / 2, -3, 0, width);
        along(free, width / 4, height + 5, 0, width);
      }
      case BOTTOM -> {
        along(crease, width / 2, height + 5, 0, width);
        along(free, width / 4, -3, 0, width);
      }
    }
  }

  private void along(String words, double x, double y, double turned, double room) {
    Words line = new Words(words, x, y, 9, false, Align.MIDDLE, turned, false);
    if (!line.isTooLongFor(room + 20)) {
      inks.add(line.within(room + 20));
    }
  }

  /** "thread" beside its ring, where there is room on the flap. */
  private void label(PieceMark mark, Side hinge) {
    boolean isNarrow = needed.piece().width() < 40 || needed.piece().height() < 25;
    if (isNarrow) {
      return;
    }
    double middleY = (mark.fromY() + mark.toY()) / 2 + 1;
    if (mark.kind() == PieceMark.Kind.THREAD) {
      switch (hinge) {
        case LEFT -> word("thread, on the back", mark.fromX() - 3, middleY, Align.END);
        case RIGHT -> word("thread, on the back", mark.fromX() + 3, middleY, Align.START);
        case TOP -> word("thread, on the back", mark.fromX(), mark.fromY() - 3, Align.MIDDLE);
        case BOTTOM -> word("thread, on the back", mark.fromX(), mark.fromY() + 5, Align.MIDDLE);
      }
    }
  }

  private void word(String words, double x, double y, Align align) {
    inks.add(new Words(words, x, y, 8, false, align, 0, false));
  }

  /** Width below and height at the right: of the hole where there is one, else of all of it. */
  private void sizes() {
    Rect board = sheet.board();
    Rect measured = measured();
    double y = board.top() + board.height() + 4;
    double right = measured.left() + measured.width();
    double bottom = measured.top() + measured.height();
    inks.add(new Ink.Line(Stroke.SIZE, measured.left(), y, right, y));
    end(measured.left(), y, 0, 1);
    end(right, y, 0, 1);
    String width = Millimeters.of(measured.width()) + " mm";
    inks.add(
        new Words(
            width,
            measured.left() + measured.width() / 2,
            y + 4,
            9,
            false,
            Align.MIDDLE,
            0,
            false));
    double x = board.left() + board.width() + 4;
    inks.add(new Ink.Line(Stroke.SIZE, x, measured.top(), x, bottom));
    end(x, measured.top(), 1, 0);
    end(x, bottom, 1, 0);
    String height = Millimeters.of(measured.height()) + " mm";
    inks.add(
        new Words(
            height,
            x + 4.5,
            measured.top() + measured.height() / 2,
            9,
            false,
            Align.MIDDLE,
            90,
            false));
  }

  /** What is cut and creased; where nothing is, the outline of the hole. */
  private Rect measured() {
    List<Rect> lines = lines(EnumSet.of(PieceMark.Kind.CUT, PieceMark.Kind.CREASE));
    return Rects.around(lines.isEmpty() ? lines(EnumSet.of(PieceMark.Kind.HIDDEN)) : lines);
  }

  private List<Rect> lines(Set<PieceMark.Kind> kinds) {
    return sheet.marks().stream()
        .filter(mark -> kinds.contains(mark.kind()))
        .map(
            mark ->
                new Rect(
                    Math.min(mark.fromX(), mark.toX()),
                    Math.min(mark.fromY(), mark.toY()),
                    Math.max(DUST, Math.abs(mark.toX() - mark.fromX())),
                    Math.max(DUST, Math.abs(mark.toY() - mark.fromY()))))
        .toList();
  }

  private void end(double x, double y, double across, double down) {
    inks.add(new Ink.Line(Stroke.SIZE, x - across, y - down, x + across, y + down));
  }
}
