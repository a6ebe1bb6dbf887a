package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.artwork.Measure;
import org.barsheet.photographs.PlannedSequence.Moving;
import org.barsheet.pixels.CameraMove;
import org.barsheet.pixels.HoleMeter;
import org.barsheet.pixels.HoleView;

/** Measures how far an opening stands open in each photograph of a sequence, where that shows. */
final class OpenMeasure {

  private final Optional<HoleMeter> meter;
  private final Optional<HoleGeometry> geometry;
  private final List<Double> open = new ArrayList<>();
  private final Optional<String> reason;

  OpenMeasure(PlannedSequence sequence, SequenceLooks looks) {
    Optional<Moving> moving = sequence.moving();
    Optional<String> why = moving.flatMap(one -> reason(one, looks));
    Optional<HoleMeter> found = Optional.empty();
    if (moving.isPresent() && why.isEmpty()) {
      if (moving.get().measure() instanceof Measure.Light light) {
        brightened(light, looks);
      } else {
        found = Optional.of(meter(moving.get(), looks));
      }
    }
    boolean seen = found.map(HoleMeter::isSeen).orElse(true);
    this.reason = seen ? why : Optional.of("the backing's color was not found in the hole");
    this.meter = found.filter(HoleMeter::isSeen);
    this.geometry = looks.planned().map(plan -> meter.map(one -> plan.at(one.hole())).orElse(plan));
    meter.ifPresent(
        one -> {
          for (int i = 0; i < looks.looks().size(); i++) {
            open.add(one.uncovered(i));
          }
        });
  }

  private static Optional<String> reason(Moving moving, SequenceLooks looks) {
    if (looks.planned().isEmpty()) {
      return Optional.of("no panel says what the camera sees (field)");
    }
    if (looks.looks().size() < 2) {
      return Optional.of("that takes two photographs");
    }
    boolean needsBacking = !(moving.measure() instanceof Measure.Light);
    return needsBacking && moving.backing().isEmpty()
        ? Optional.of("its model has no backing of a color that is known")
        : Optional.empty();
  }

  private static HoleMeter meter(Moving moving, SequenceLooks looks) {
    HoleGeometry hole = looks.planned().orElseThrow();
    List<HoleView> views = looks.looks().stream().map(look -> look.hole().orElseThrow()).toList();
    List<CameraMove> moves = looks.looks().stream().map(Look::move).toList();
    return new HoleMeter(
        views,
        moves,
        looks.frames().width(),
        looks.frames().height(),
        hole.hole(),
        hole.edges(),
        moving.backing().orElseThrow());
  }

  /** A lamp's light, as a share of its brightest photograph's. */
  private void brightened(Measure.Light light, SequenceLooks looks) {
    double[] lights =
        looks.looks().stream()
            .mapToDouble(
                look ->
                    HoleMeter.light(
                        look.hole().orElseThrow(), looks.planned().orElseThrow().hole()))
            .toArray();
    double least = java.util.Arrays.stream(lights).min().orElse(0);
    double most = java.util.Arrays.stream(lights).max().orElse(1);
    for (double one : lights) {
      open.add(most == least ? 0 : (one - least) / (most - least) * light.whole() / 100);
    }
  }

  /** Why it could not be measured, in words that follow "how far it is open"; else empty. */
  Optional<String> reason() {
    return reason;
  }

  boolean isKnown() {
    return !open.isEmpty();
  }

  Optional<HoleMeter> meter() {
    return meter;
  }

  /** The hole where the photographs show it, or as planned. */
  Optional<HoleGeometry> geometry() {
    return geometry;
  }

  /** Share of the hole that a photograph shows uncovered. */
  OptionalDouble at(int index) {
    return isKnown() ? OptionalDouble.of(open.get(index)) : OptionalDouble.empty();
  }

  /** The share that a planned photograph is to show. */
  OptionalDouble planned(PlannedPhotograph photograph) {
    return photograph.number() < 0 || geometry.isEmpty()
        ? OptionalDouble.empty()
        : geometry.get().uncovered(photograph.amount());
  }
}
