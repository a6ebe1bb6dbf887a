package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
    this.optics = plan.camera().map(camera -> new Optics(camera, plan.film()));
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
    return optics.orElseThrow().headroom() * narrowest(works) >= together.wide();
  }

  /** The view for movements that one view serves; empty where no panel gives a field. */
  Optional<CameraView> of(List<MovementWork> works) {
    return field(works).map(field -> view(works, field));
  }

  private CameraView view(List<MovementWork> works, Rect field) {
    ModelScale scale = ModelScale.of(works.get(0).model(), plan.artwork());
    double wide = scale.millimetres(field.wide());
    double narrowest = narrowest(works);
    return new CameraView(
        field,
        wide,
        scale.millimetres(field.high()),
        narrowest,
        optics.map(o -> OptionalDouble.of(o.distance(wide))).orElse(OptionalDouble.empty()),
        optics
            .map(o -> OptionalDouble.of(field.wide() / narrowest / o.headroom()))
            .orElse(OptionalDouble.empty()));
  }

  /**
   * In the artwork itself, all that its panels see; on a model of its own, which stands for
   * openings in several places, the widest of its panels' fields.
   */
  private Optional<Rect> field(List<MovementWork> works) {
    List<Rect> seen = new ArrayList<>();
    works.forEach(work -> work.fields().forEach(field -> seen.add(enclosing(field))));
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    if (works.get(0).model().enlarged() == 1) {
      return Optional.of(Rects.shaped(Rects.around(seen), highPerWide));
    }
    Rect widest = seen.get(0);
    for (Rect rect : seen) {
      widest = rect.wide() > widest.wide() ? rect : widest;
    }
    return Optional.of(widest);
  }

  /** What a moving camera sees in all, in the shape of the film's picture. */
  private Rect enclosing(Field field) {
    return field.isMoving()
        ? Rects.shaped(Rects.around(List.of(field.from(), field.to())), highPerWide)
        : field.from();
  }

  private static double narrowest(List<MovementWork> works) {
    return works.stream()
        .flatMap(work -> work.fields().stream())
        .mapToDouble(field -> Math.min(field.from().wide(), field.to().wide()))
        .min()
        .orElseThrow();
  }
}
