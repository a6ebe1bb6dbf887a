package org.barsheet.shooting;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.artwork.ModelScale;
import org.barsheet.artwork.Optics;
import org.barsheet.artwork.Rects;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Field;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Rect;

/**
 * What the camera has to see. In the artwork itself one view may hold the fields of several panels,
 * as long as the camera has pixels to spare for the narrowest of them.
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

  /** What a movement's panels show. */
  Sight of(MovementWork work) {
    return new Sight(
        work.model(),
        work.fields().stream().map(this::enclosing).distinct().toList(),
        work.fields().stream()
            .mapToDouble(field -> Math.min(field.from().width(), field.to().width()))
            .min()
            .orElse(Double.POSITIVE_INFINITY));
  }

  /** The whole artwork, whatever panels show of it: each plate says for itself how sharp it is. */
  Sight ofWhole(Artwork.Model model) {
    Artwork artwork = plan.workshop().artwork();
    Rect whole = new Rect(0, 0, artwork.squaresWide(), artwork.squaresHigh());
    return new Sight(model, List.of(Rects.shaped(whole, highPerWide)), Double.POSITIVE_INFINITY);
  }

  /** Whether one view serves all of these. */
  boolean one(List<Sight> sights) {
    if (sights.size() == 1) {
      return true;
    }
    if (sights.stream().anyMatch(sight -> !sight.model().equals(sights.get(0).model()))) {
      return false;
    }
    Optional<Rect> together = field(sights);
    if (together.isEmpty() || sights.stream().anyMatch(sight -> sight.seen().isEmpty())) {
      return sights.stream().allMatch(sight -> sight.seen().isEmpty());
    }
    boolean alike = sights.stream().allMatch(sight -> field(List.of(sight)).equals(together));
    boolean artwork = sights.get(0).model().enlarged() == 1;
    return alike || (artwork && optics.isPresent() && isSharp(sights, together.get()));
  }

  private boolean isSharp(List<Sight> sights, Rect together) {
    return optics.orElseThrow().headroom() * narrowest(sights) >= together.width();
  }

  /** The view for what one view serves; empty where no panel gives a field. */
  Optional<CameraView> of(List<Sight> sights) {
    return field(sights).map(field -> view(sights, field));
  }

  private CameraView view(List<Sight> sights, Rect field) {
    ModelScale scale = ModelScale.of(sights.get(0).model(), plan.workshop().artwork());
    double width = scale.millimeters(field.width());
    double narrowest = Math.min(field.width(), narrowest(sights));
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

  /** All that is seen. */
  private Optional<Rect> field(List<Sight> sights) {
    List<Rect> seen = sights.stream().flatMap(sight -> sight.seen().stream()).toList();
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    if (new HashSet<>(seen).size() == 1) {
      return Optional.of(seen.get(0));
    }
    Rect shaped = Rects.shaped(Rects.around(seen), highPerWide);
    boolean artwork = sights.get(0).model().enlarged() == 1;
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

  private static double narrowest(List<Sight> sights) {
    return sights.stream().mapToDouble(Sight::narrowest).min().orElseThrow();
  }
}
