package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.artwork.ModelScale;
import org.barsheet.artwork.Optics;
import org.barsheet.artwork.Rects;
import org.barsheet.plan.Field;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Rect;

/**
 * What the camera has to see for some movements. In the artwork itself one view may hold the fields
 * of several panels, as long as the camera has pixels to spare for the narrowest of them.
 */
final class CameraViews {

  private final Plan plan;
  private final double highPerWide;
  private final Optional<Optics> optics;

  CameraViews(Plan plan) {
    this.plan = plan;
    this.highPerWide = (double) plan.film().height() / plan.film().width();
    this.optics = plan.workshop().camera().map(camera -> new Optics(camera, plan.film()));
  }

  /** Whether one view serves all of these movements. */
  boolean one(List<MovementWork> works) {
    if (works.size() == 1) {
      return true;
    }
    Optional<Rect> together = field(works);
    if (together.isEmpty() || works.stream().anyMatch(work -> work.fields().isEmpty())) {
      return works.stream().allMatch(work -> work.fields().isEmpty());
    }
    boolean alike = works.stream().allMatch(work -> field(List.of(work)).equals(together));
    boolean artwork = works.get(0).model().enlarged() == 1;
    return alike || (artwork && optics.isPresent() && isSharp(works, together.get()));
  }

  private boolean isSharp(List<MovementWork> works, Rect together) {
    return optics.orElseThrow().headroom() * narrowest(works) >= together.width();
  }

  /** The view for movements that one view serves; empty where no panel gives a field. */
  Optional<CameraView> of(List<MovementWork> works) {
    return field(works).map(field -> view(works, field));
  }

  private CameraView view(List<MovementWork> works, Rect field) {
    ModelScale scale = ModelScale.of(works.get(0).model(), plan.workshop().artwork());
    double width = scale.millimeters(field.width());
    double narrowest = narrowest(works);
    return new CameraView(
        field,
        width,
        scale.millimeters(field.height()),
        narrowest,
        optics.map(o -> OptionalDouble.of(o.distance(width))).orElse(OptionalDouble.empty()),
        optics
            .map(o -> OptionalDouble.of(field.width() / narrowest / o.headroom()))
            .orElse(OptionalDouble.empty()));
  }

  /** All that its panels see. */
  private Optional<Rect> field(List<MovementWork> works) {
    List<Rect> seen = new ArrayList<>();
    works.forEach(work -> work.fields().forEach(field -> seen.add(enclosing(field))));
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    if (new HashSet<>(seen).size() == 1) {
      return Optional.of(seen.get(0));
    }
    Rect shaped = Rects.shaped(Rects.around(seen), highPerWide);
    boolean artwork = works.get(0).model().enlarged() == 1;
    return Optional.of(artwork ? onPaper(shaped) : shaped);
  }

  /** The same field moved onto the artwork's paper, where it is not larger than that. */
  private Rect onPaper(Rect field) {
    double right = onPaper(field.left(), field.width(), plan.workshop().artwork().squaresWide());
    double down = onPaper(field.top(), field.height(), plan.workshop().artwork().squaresHigh());
    return Rects.moved(field, right, down);
  }

  /** How far a stretch has to be moved to lie between 0 and an end, if it is not longer. */
  private static double onPaper(double from, double length, double end) {
    return length > end ? 0 : Math.max(0, -from) - Math.max(0, from + length - end);
  }

  /** What a moving camera sees in all, in the shape of the frame. */
  private Rect enclosing(Field field) {
    return field.isMoving()
        ? Rects.shaped(Rects.around(List.of(field.from(), field.to())), highPerWide)
        : field.from();
  }

  private static double narrowest(List<MovementWork> works) {
    return works.stream()
        .flatMap(work -> work.fields().stream())
        .mapToDouble(field -> Math.min(field.from().width(), field.to().width()))
        .min()
        .orElseThrow();
  }
}
