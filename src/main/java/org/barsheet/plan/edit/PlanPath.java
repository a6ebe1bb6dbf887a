package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.plan.source.Entry;

/**
 * The way from the whole plan to one of its values: {@code panels, 3rd, cue}.
 *
 * @param steps from the outside in
 */
public record PlanPath(List<Step> steps) {

  /** The whole plan. */
  public static final PlanPath ROOT = new PlanPath(List.of());

  /** One level down. */
  public sealed interface Step {}

  /** To the value of a key. */
  public record Key(String name) implements Step {}

  /**
   * To an item of a list.
   *
   * @param index from 0
   */
  public record Item(int index) implements Step {}

  public PlanPath {
    steps = List.copyOf(steps);
  }

  public PlanPath key(String name) {
    return then(new Key(name));
  }

  public PlanPath item(int index) {
    return then(new Item(index));
  }

  /** The way to what it is a part of. */
  PlanPath above() {
    return new PlanPath(steps.subList(0, steps.size() - 1));
  }

  /** Whether it leads to a key of what another way leads to. */
  boolean isKeyOf(PlanPath table) {
    return steps.size() == table.steps.size() + 1 && !lastKey().isEmpty() && above().equals(table);
  }

  /** The key it ends with; "" where it ends with an item. */
  String lastKey() {
    return steps.get(steps.size() - 1) instanceof Key key ? key.name() : "";
  }

  private PlanPath then(Step step) {
    List<Step> longer = new ArrayList<>(steps);
    longer.add(step);
    return new PlanPath(longer);
  }

  /**
   * The same way as a plan has it: without the step to the only item of a list that is written
   * without its dash.
   */
  PlanPath in(Entry plan) {
    PlanPath way = ROOT;
    Optional<Entry> entry = Optional.of(plan);
    for (Step step : steps) {
      boolean onlyItem = step.equals(new Item(0)) && entry.orElse(plan) instanceof Entry.Keyed;
      if (!onlyItem) {
        way = way.then(step);
        entry = entry.flatMap(from -> down(from, step));
      }
    }
    return way;
  }

  /** The text it leads to, if it leads to one. */
  Optional<Entry.Text> textIn(Entry plan) {
    return entryIn(plan).filter(Entry.Text.class::isInstance).map(Entry.Text.class::cast);
  }

  /** What it leads to, if it leads anywhere. */
  Optional<Entry> entryIn(Entry plan) {
    Optional<Entry> entry = Optional.of(plan);
    for (Step step : steps) {
      entry = entry.flatMap(from -> down(from, step));
    }
    return entry;
  }

  private static Optional<Entry> down(Entry from, Step step) {
    if (step instanceof Key key) {
      return from instanceof Entry.Keyed keyed
          ? keyed.member(key.name()).map(Entry.Member::value)
          : Optional.empty();
    }
    int index = ((Item) step).index();
    return from instanceof Entry.Items items && index < items.items().size()
        ? Optional.of(items.items().get(index))
        : Optional.empty();
  }
}
