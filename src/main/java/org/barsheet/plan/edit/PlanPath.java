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

  /**
   * To the item of a list that a key's text tells from the others.
   *
   * @param key what tells the items apart: {@code panel}
   * @param text without blanks around it: {@code 7}
   */
  public record Named(String key, String text) implements Step {}

  public PlanPath {
    steps = List.copyOf(steps);
  }

  /** As people say it: {@code panel 7 cue}. */
  @Override
  public String toString() {
    List<String> words = new ArrayList<>();
    for (Step step : steps) {
      if (step instanceof Named named) {
        words.set(words.size() - 1, named.key() + " " + named.text());
      } else {
        words.add(step instanceof Key key ? key.name() : "" + (((Item) step).index() + 1));
      }
    }
    return String.join(" ", words);
  }

  public PlanPath key(String name) {
    return then(new Key(name));
  }

  public PlanPath item(int index) {
    return then(new Item(index));
  }

  /** To the item whose key has a text: {@code named("panel", "7")}. */
  public PlanPath named(String key, String text) {
    return then(new Named(key, text));
  }

  /** The way to what it is a part of. */
  public PlanPath above() {
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

  /** The item it ends with, from 0; −1 where it ends with a key. */
  int lastIndex() {
    return steps.get(steps.size() - 1) instanceof Item item ? item.index() : -1;
  }

  PlanPath then(Step step) {
    List<Step> longer = new ArrayList<>(steps);
    longer.add(step);
    return new PlanPath(longer);
  }

  /**
   * The same way as a plan has it: with the numbers of items that were named, and without the step
   * to the only item of a list that is written without its dash.
   */
  public PlanPath in(Entry plan) {
    PlanPath way = ROOT;
    Optional<Entry> entry = Optional.of(plan);
    for (Step step : steps) {
      Entry from = entry.orElse(plan);
      Step numbered = entry.map(above -> numbered(above, step)).orElse(step);
      boolean onlyItem = numbered.equals(new Item(0)) && from instanceof Entry.Keyed;
      if (!onlyItem) {
        way = way.then(numbered);
        entry = entry.flatMap(above -> down(above, numbered));
      }
    }
    return way;
  }

  private static Step numbered(Entry from, Step step) {
    if (step instanceof Named named) {
      List<Entry> items = from instanceof Entry.Items list ? list.items() : List.of(from);
      for (int i = 0; i < items.size(); i++) {
        Optional<Entry.Text> text = ROOT.key(named.key()).textIn(items.get(i));
        if (text.isPresent() && text.get().text().strip().equals(named.text())) {
          return new Item(i);
        }
      }
    }
    return step;
  }

  /** The text it leads to, if it leads to one. */
  public Optional<Entry.Text> textIn(Entry plan) {
    return entryIn(plan).filter(Entry.Text.class::isInstance).map(Entry.Text.class::cast);
  }

  /** What it leads to, if it leads anywhere. */
  public Optional<Entry> entryIn(Entry plan) {
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
    int index = step instanceof Item item ? item.index() : Integer.MAX_VALUE;
    return from instanceof Entry.Items items && index < items.items().size()
        ? Optional.of(items.items().get(index))
        : Optional.empty();
  }
}
