package org.barsheet.artwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Brightens;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.LiftsOff;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Opening.Support;
import org.barsheet.plan.Rect;

/**
 * What is cut out of paper for an opening, at the size of its model: a flap in its frame, a shutter
 * and the frame it slides on. The free edge lies where the measures of its movement have it: a
 * thread leaves at the very edge, and a shutter's trailing edge begins flush with its hole.
 *
 * @param opening what it is for
 * @param scale of its model
 * @param width of the hole in millimeters
 * @param height of the hole in millimeters
 * @param sheets the sheets of paper it is made of
 */
public record Piece(
    Opening opening, ModelScale scale, double width, double height, List<PieceSheet> sheets) {

  /** Paper around a hole, to hold it by: common practice, no source. */
  public static final double BORDER = 12;

  /** How far what covers a hole reaches beyond it. */
  public static final double LAP = 4;

  /** Side of the largest spot of putty; a quarter of a small flap. */
  private static final double PUTTY = 12;

  public Piece {
    sheets = List.copyOf(sheets);
  }

  /** The piece of an opening. */
  public static Piece of(Opening opening, Artwork artwork) {
    ModelScale scale = ModelScale.of(opening, artwork);
    double width = scale.millimeters(opening.rect().width());
    double height = scale.millimeters(opening.rect().height());
    return new Piece(opening, scale, width, height, sheets(opening, new Rect(0, 0, width, height)));
  }

  /** Whether one piece of paper does for both: same model, same hole, moved the same way. */
  public boolean fits(Piece other) {
    boolean isArtwork = scale.enlarged() == 1;
    return scale.model().equals(other.scale().model())
        && (!isArtwork || opening.name().equals(other.opening().name()))
        && opening.motion().getClass() == other.opening().motion().getClass()
        && toward().equals(other.toward())
        && Math.abs(width - other.width()) < 0.05
        && Math.abs(height - other.height()) < 0.05;
  }

  /** {@code hinge at the left} or {@code slides up}; "" for what does neither. */
  public String toward() {
    if (opening.motion() instanceof Hinged hinged) {
      return "hinge at the " + hinged.hinge().name().toLowerCase(Locale.ROOT);
    }
    return opening.motion() instanceof Slides slides ? "slides " + way(slides.toward()) : "";
  }

  private static String way(Side side) {
    return switch (side) {
      case LEFT -> "left";
      case RIGHT -> "right";
      case TOP -> "up";
      case BOTTOM -> "down";
    };
  }

  private static List<PieceSheet> sheets(Opening opening, Rect hole) {
    if (opening.motion() instanceof Hinged hinged) {
      return List.of(flap(opening, hinged.hinge(), hole));
    } else if (opening.motion() instanceof Slides slides) {
      return List.of(rails(slides, hole), shutter(slides, hole));
    } else if (opening.motion() instanceof LiftsOff) {
      Rect lid = grown(hole, LAP);
      return List.of(
          frame(hole, hole),
          new PieceSheet("lid", lid, with(PieceMark.Kind.CUT, lid, PieceMark.Kind.HIDDEN, hole)));
    } else if (opening.motion() instanceof Iris iris) {
      double part = iris.percent() / 100;
      double across = hole.width() * (1 - part) / 2;
      double down = hole.height() * (1 - part) / 2;
      Rect cut = new Rect(across, down, hole.width() * part, hole.height() * part);
      return List.of(frame(hole, cut));
    }
    return opening.motion() instanceof Brightens
        ? List.of(frame(hole, hole))
        : List.of(
            new PieceSheet(
                "outline",
                grown(hole, BORDER),
                with(PieceMark.Kind.TRIM, grown(hole, BORDER), PieceMark.Kind.HIDDEN, hole)));
  }

  private static PieceSheet frame(Rect hole, Rect cut) {
    Rect board = grown(hole, BORDER);
    return new PieceSheet(
        "frame", board, with(PieceMark.Kind.TRIM, board, PieceMark.Kind.CUT, cut));
  }

  private static List<PieceMark> with(
      PieceMark.Kind kind, Rect rect, PieceMark.Kind otherKind, Rect other) {
    List<PieceMark> marks = new ArrayList<>(PieceMark.around(kind, rect));
    marks.addAll(PieceMark.around(otherKind, other));
    return marks;
  }

  private static Rect grown(Rect rect, double by) {
    return new Rect(
        rect.left() - by, rect.top() - by, rect.width() + 2 * by, rect.height() + 2 * by);
  }

  private static PieceSheet flap(Opening opening, Side hinge, Rect hole) {
    Rect board = grown(hole, BORDER);
    List<PieceMark> marks = new ArrayList<>(PieceMark.around(PieceMark.Kind.TRIM, board));
    marks.addAll(flapLines(hinge, hole));
    if (isHeldBy(opening, kind -> kind.equals("thread") || kind.equals("wire"))) {
      marks.add(thread(hinge, hole));
    }
    if (isHeldBy(opening, kind -> kind.equals("putty"))) {
      marks.add(putty(hinge, hole));
    }
    return new PieceSheet("flap", board, marks);
  }

  /** Three sides to cut and one to crease. */
  public static List<PieceMark> flapLines(Side hinge, Rect hole) {
    List<PieceMark> sides = new ArrayList<>(PieceMark.around(PieceMark.Kind.CUT, hole));
    int at =
        switch (hinge) {
          case TOP -> 0;
          case RIGHT -> 1;
          case BOTTOM -> 2;
          case LEFT -> 3;
        };
    PieceMark cut = sides.get(at);
    sides.set(
        at, new PieceMark(PieceMark.Kind.CREASE, cut.fromX(), cut.fromY(), cut.toX(), cut.toY()));
    return sides;
  }

  private static boolean isHeldBy(Opening opening, Predicate<String> kind) {
    return opening.heldBy().stream().map(Support::kind).anyMatch(kind);
  }

  /** The middle of the free edge. */
  private static PieceMark thread(Side hinge, Rect hole) {
    double x = hinge == Side.LEFT ? hole.width() : hinge == Side.RIGHT ? 0 : hole.width() / 2;
    double y = hinge == Side.TOP ? hole.height() : hinge == Side.BOTTOM ? 0 : hole.height() / 2;
    return new PieceMark(PieceMark.Kind.THREAD, x, y, x, y);
  }

  /** Beside the free edge, toward the lower or right end of it, away from the thread. */
  private static PieceMark putty(Side hinge, Rect hole) {
    double side = Math.min(PUTTY, Math.min(hole.width(), hole.height()) / 4);
    double right = hole.width() - side / 2;
    double bottom = hole.height() - side / 2;
    double x = hinge == Side.RIGHT ? 1.5 * side : right;
    double y = hinge == Side.BOTTOM ? 1.5 * side : bottom;
    return new PieceMark(PieceMark.Kind.PUTTY, x - side, y - side, x, y);
  }

  /** The frame a shutter slides on: the hole, and the rails as long as its way. */
  private static PieceSheet rails(Slides slides, Rect hole) {
    double way = way(slides, hole);
    Rect swept = swept(slides.toward(), hole, way + LAP);
    Rect between = acrossGrown(slides.toward(), swept);
    Rect board = grown(between, BORDER);
    List<PieceMark> marks =
        new ArrayList<>(with(PieceMark.Kind.TRIM, board, PieceMark.Kind.CUT, hole));
    List<PieceMark> rails = PieceMark.around(PieceMark.Kind.RAIL, between);
    boolean isUpright = slides.toward() == Side.TOP || slides.toward() == Side.BOTTOM;
    marks.add(rails.get(isUpright ? 1 : 0));
    marks.add(rails.get(isUpright ? 3 : 2));
    return new PieceSheet("frame", board, marks);
  }

  private static PieceSheet shutter(Slides slides, Rect hole) {
    Rect cut = acrossGrown(slides.toward(), swept(slides.toward(), hole, LAP));
    return new PieceSheet(
        "shutter", cut, with(PieceMark.Kind.CUT, cut, PieceMark.Kind.HIDDEN, hole));
  }

  private static double way(Slides slides, Rect hole) {
    boolean isAcross = slides.toward() == Side.LEFT || slides.toward() == Side.RIGHT;
    double own = isAcross ? hole.width() : hole.height();
    return slides.millimeters() > 0 ? slides.millimeters() : own;
  }

  /** A hole made longer toward a side; its trailing edge stays. */
  private static Rect swept(Side toward, Rect hole, double by) {
    double left = toward == Side.LEFT ? -by : 0;
    double top = toward == Side.TOP ? -by : 0;
    boolean isAcross = toward == Side.LEFT || toward == Side.RIGHT;
    return new Rect(
        left, top, hole.width() + (isAcross ? by : 0), hole.height() + (isAcross ? 0 : by));
  }

  /** Wider by the lap on either side of the way it slides. */
  private static Rect acrossGrown(Side toward, Rect rect) {
    boolean isAcross = toward == Side.LEFT || toward == Side.RIGHT;
    double x = isAcross ? 0 : LAP;
    double y = isAcross ? LAP : 0;
    return new Rect(rect.left() - x, rect.top() - y, rect.width() + 2 * x, rect.height() + 2 * y);
  }
}
