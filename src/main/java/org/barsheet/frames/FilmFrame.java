package org.barsheet.frames;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.barsheet.plan.Rect;
import org.barsheet.timing.Shot;

/**
 * One frame of a film, from back to front.
 *
 * @param shot it belongs to
 * @param field what the camera sees, in squares of the artwork
 * @param plate at the back
 * @param openings over it, in the plan's order
 * @param strip in words
 */
public record FilmFrame(
    Shot shot, Rect field, Plate plate, List<SeenOpening> openings, Strip strip) {

  public FilmFrame {
    openings = List.copyOf(openings);
  }

  /**
   * The layers an editor puts it together from, back to front: {@code plate}, {@code celesta in
   * bakers-lamp}, {@code layer_1}. The backing in a photograph's openings is keyed out, so that
   * whoever is seen shows through.
   */
  public List<String> order() {
    List<String> order = new ArrayList<>(List.of("plate"));
    openings.stream().flatMap(FilmFrame::inserts).forEach(order::add);
    openings.stream()
        .flatMap(opening -> opening.shown().stream())
        .sorted(Comparator.comparingInt(SeenOpening.Shown::layer))
        .forEach(shown -> order.add("layer_" + shown.layer()));
    return List.copyOf(order);
  }

  private static Stream<String> inserts(SeenOpening opening) {
    String in = " in " + opening.shape().opening().name();
    return opening.inserts().stream().map(insert -> insert.performer().name() + in);
  }
}
