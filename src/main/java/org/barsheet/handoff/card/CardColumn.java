package org.barsheet.handoff.card;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.exposure.PhotographMeasures;
import org.barsheet.plan.Opening.Support;

/**
 * A column of numbers on a shooting card.
 *
 * @param name what it measures
 * @param unit in which unit
 * @param support the kind of support that goes by it, or ""
 * @param cell the number of a photograph, or ""
 */
record CardColumn(
    String name, String unit, String support, Function<MovedPhotograph, String> cell) {

  /** The columns a movement has use for, in the order they stand. */
  static List<CardColumn> of(Movement movement) {
    int decimals = decimals(movement);
    List<CardColumn> columns = new ArrayList<>();
    columns.add(new CardColumn("done", "%", "", CardColumn::percent));
    columns.add(
        new CardColumn(
            setName(movement.measure()),
            movement.measure().unit(),
            "",
            photograph -> plain(photograph.measures().set(), decimals)));
    columns.add(step(movement, decimals));
    addIfAny(columns, movement, new Length("height", "putty", PhotographMeasures::height));
    addIfAny(columns, movement, new Length("thread", "thread", PhotographMeasures::pull));
    return columns;
  }

  /** A length told of each photograph, where it has one. */
  private record Length(
      String name, String support, Function<PhotographMeasures, Optional<BigDecimal>> of) {
    String cell(MovedPhotograph photograph) {
      return of.apply(photograph.measures()).map(BigDecimal::toPlainString).orElse("");
    }
  }

  private static void addIfAny(List<CardColumn> columns, Movement movement, Length length) {
    boolean lifts = movement.measure() instanceof Measure.Lift;
    if (!lifts && !length.cell(movement.photographs().get(0)).isEmpty()) {
      columns.add(new CardColumn(length.name(), "mm", length.support(), length::cell));
    }
  }

  private static CardColumn step(Movement movement, int decimals) {
    boolean edge = movement.moved().get(0).measures().edgeStep().isPresent();
    return edge
        ? new CardColumn("step", "mm", "", CardColumn::edgeStep)
        : new CardColumn(
            "step", movement.measure().unit(), "", photograph -> ownStep(photograph, decimals));
  }

  private static String edgeStep(MovedPhotograph photograph) {
    return photograph.photograph().number() == 0
        ? ""
        : photograph.measures().edgeStep().map(BigDecimal::toPlainString).orElse("");
  }

  private static String ownStep(MovedPhotograph photograph, int decimals) {
    return photograph.photograph().number() == 0
        ? ""
        : plain(photograph.measures().step(), decimals);
  }

  private static String setName(Measure measure) {
    return switch (measure.unit()) {
      case "deg" -> "angle";
      case "%" -> "light";
      default ->
          measure instanceof Measure.Widening
              ? "width"
              : measure instanceof Measure.Lift ? "height" : "way";
    };
  }

  private static String percent(MovedPhotograph photograph) {
    return BigDecimal.valueOf(100 * photograph.progress())
        .setScale(1, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /** All amounts of a movement have the same number of decimals, so that they stand in line. */
  private static int decimals(Movement movement) {
    return movement.photographs().stream()
        .mapToInt(photograph -> Math.max(0, photograph.measures().set().scale()))
        .max()
        .orElse(0);
  }

  private static String plain(BigDecimal amount, int decimals) {
    return amount.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString();
  }

  /** Whether the hand goes by this number: by height on putty, by the thread on thread. */
  boolean isHandled(MovedPhotograph photograph, List<CardColumn> columns) {
    String kind = photograph.measures().heldBy().map(Support::kind).orElse("");
    boolean other =
        columns.stream().anyMatch(c -> !c.support().isEmpty() && c.support().equals(kind));
    return other ? support.equals(kind) : columns.indexOf(this) == 1;
  }
}
