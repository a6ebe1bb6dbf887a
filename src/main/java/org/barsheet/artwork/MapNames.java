package org.barsheet.artwork;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Rect;

/**
 * Finds room for the names of openings: inside, broken after hyphens, or else beside, where nothing
 * else stands.
 */
final class MapNames {

  private static final double POINTS = 8;
  private static final double LINE = 3;

  /** Width of a letter; names are mostly small letters of 8 points. */
  private static final double LETTER = 1.5;

  /** Kept free at the foot and the side of an opening for the sign of its motion. */
  private static final double SIGN = 2.6;

  private static final double GAP = 0.8;

  private final Rect sheet;
  private final List<Rect> taken;

  MapNames(Rect sheet, List<Rect> openings) {
    this.sheet = sheet;
    this.taken = new ArrayList<>(openings);
  }

  /**
   * Writes a name.
   *
   * @param signBeside whether the sign of the opening's motion stands at its right side, else at
   *     its foot
   */
  List<MapMark> place(String name, Rect opening, boolean signBeside) {
    List<String> lines = broken(name);
    double width = lines.stream().mapToInt(String::length).max().orElse(0) * LETTER;
    double height = lines.size() * LINE;
    double across = opening.width() - (signBeside ? SIGN : 0);
    double down = opening.height() - (signBeside ? 0 : SIGN);
    if (width <= across - GAP && height <= down - GAP) {
      return text(lines, opening.left() + across / 2, opening.top() + down / 2);
    }
    Rect place = beside(opening, Math.max(width, LETTER), height);
    taken.add(place);
    return text(lines, place.left() + place.width() / 2, place.top() + place.height() / 2);
  }

  /** A name in lines, a new one after each hyphen. */
  private static List<String> broken(String name) {
    return List.of(name.split("(?<=-)(?=.)"));
  }

  /** The first free place: below, above, to the right, to the left; below where none is free. */
  private Rect beside(Rect opening, double width, double height) {
    double middle = opening.left() + (opening.width() - width) / 2;
    double level = opening.top() + (opening.height() - height) / 2;
    Rect below = new Rect(middle, opening.top() + opening.height() + GAP, width, height);
    List<Rect> places =
        List.of(
            below,
            new Rect(middle, opening.top() - height - GAP, width, height),
            new Rect(opening.left() + opening.width() + GAP, level, width, height),
            new Rect(opening.left() - width - GAP, level, width, height));
    return places.stream().filter(this::isFree).findFirst().orElse(below);
  }

  private boolean isFree(Rect place) {
    return isWithin(place) && taken.stream().noneMatch(other -> Rects.meet(place, other));
  }

  private boolean isWithin(Rect place) {
    return place.left() >= sheet.left()
        && place.top() >= sheet.top()
        && place.left() + place.width() <= sheet.left() + sheet.width()
        && place.top() + place.height() <= sheet.top() + sheet.height();
  }

  private static List<MapMark> text(List<String> lines, double x, double y) {
    List<MapMark> marks = new ArrayList<>();
    double top = y - (lines.size() - 1) * LINE / 2;
    for (int i = 0; i < lines.size(); i++) {
      marks.add(new MapMark.Text(x, top + i * LINE, lines.get(i), POINTS, true));
    }
    return marks;
  }
}
