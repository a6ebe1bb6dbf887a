package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.plan.source.Entry;

/**
 * Edits that were made in one version of a plan, as they are to be made in another: panels are
 * found by their names, reveals by their openings, wherever they stand now.
 *
 * @param edits one after another
 * @param clashes places that both changed
 */
public record Carried(List<TreeEdit> edits, List<Clash> clashes) {

  /** What tells the items of a list apart. */
  private static final Map<String, String> NAMES =
      Map.of("panels", "panel", "reveals", "opening", "appears", "performer", "pins", "bar");

  /**
   * A place that an edit changes and that isn't what it was when the edit was made.
   *
   * @param at the place
   * @param mine what the edit makes of it; nothing where it goes
   * @param theirs what it is now; nothing where it is gone
   */
  public record Clash(PlanPath at, Optional<Entry> mine, Optional<Entry> theirs) {}

  public Carried {
    edits = List.copyOf(edits);
    clashes = List.copyOf(clashes);
  }

  /**
   * Carries edits over.
   *
   * @param edits the smallest ones, one after another
   * @param seen the plan they were made in
   * @param now the plan they are to be made in
   */
  public static Carried over(List<TreeEdit> edits, Entry.Keyed seen, Entry.Keyed now) {
    List<TreeEdit> carried = new ArrayList<>();
    List<Clash> clashes = new ArrayList<>();
    Entry.Keyed from = seen;
    Entry.Keyed to = now;
    for (TreeEdit edit : edits) {
      PlanPath at = edit.at().in(from);
      Optional<Clash> clash = clash(edit, at, from, to);
      clash.ifPresent(clashes::add);
      for (TreeEdit there : there(edit, at, from, to)) {
        carried.add(there);
        to = ChangedTree.of(to, there);
      }
      from = ChangedTree.of(from, edit);
    }
    return new Carried(carried, clashes);
  }

  private static Optional<Clash> clash(
      TreeEdit edit, PlanPath at, Entry.Keyed from, Entry.Keyed to) {
    PlanPath owner = lasting(at.above(), from).in(to);
    if (edit instanceof TreeEdit.Insert) {
      boolean gone = at.above().entryIn(from).isPresent() && owner.entryIn(to).isEmpty();
      return gone ? Optional.of(new Clash(at, mine(edit), Optional.empty())) : Optional.empty();
    }
    Optional<Entry> before = at.entryIn(from);
    Optional<Entry> theirs = lasting(at, from).in(to).entryIn(to);
    Optional<Entry> mine = mine(edit);
    boolean moves = edit instanceof TreeEdit.Move || edit instanceof TreeEdit.Rename;
    boolean whole = owner.steps().isEmpty() || owner.entryIn(to).isPresent();
    boolean same =
        whole && (areSame(before, theirs) || (moves ? theirs.isPresent() : areSame(mine, theirs)));
    return same ? Optional.empty() : Optional.of(new Clash(lasting(at, from), mine, theirs));
  }

  private static Optional<Entry> mine(TreeEdit edit) {
    if (edit instanceof TreeEdit.Put put) {
      return Optional.of(put.value());
    }
    if (edit instanceof TreeEdit.Rename rename) {
      return Optional.of(Values.text(rename.key()));
    }
    return edit instanceof TreeEdit.Insert insert ? Optional.of(insert.value()) : Optional.empty();
  }

  private static boolean areSame(Optional<Entry> one, Optional<Entry> other) {
    return one.isPresent()
        ? other.isPresent() && Values.areSame(one.get(), other.get())
        : other.isEmpty();
  }

  /**
   * The edit in the other plan; none where there is nothing to change, or nothing to change it in.
   */
  private static List<TreeEdit> there(
      TreeEdit edit, PlanPath at, Entry.Keyed from, Entry.Keyed to) {
    PlanPath way = lasting(at, from);
    try {
      if (edit instanceof TreeEdit.Insert insert) {
        return new TreeEdit.Insert(behind(at, from, to), insert.value()).in(to);
      }
      if (edit instanceof TreeEdit.Put put) {
        return new TreeEdit.Put(way, put.value()).in(to);
      }
      if (edit instanceof TreeEdit.Rename rename) {
        return new TreeEdit.Rename(way, rename.key()).in(to);
      }
      return edit instanceof TreeEdit.Move move
          ? new TreeEdit.Move(way, Math.min(move.to(), last(way.in(to).above(), to))).in(to)
          : new TreeEdit.Remove(way).in(to);
    } catch (IllegalArgumentException nowhere) {
      return List.of();
    }
  }

  private static int last(PlanPath list, Entry.Keyed plan) {
    boolean items = list.entryIn(plan).orElse(plan) instanceof Entry.Items;
    return items ? ((Entry.Items) list.entryIn(plan).orElseThrow()).items().size() - 1 : 0;
  }

  /** Where an item goes that is to stand behind the same one as before. */
  private static PlanPath behind(PlanPath at, Entry.Keyed from, Entry.Keyed to) {
    PlanPath list = lasting(at.above(), from).in(to);
    int index = at.lastIndex();
    if (index > 0) {
      PlanPath before = lasting(at.above().item(index - 1), from).in(to);
      index = before.entryIn(to).isPresent() ? before.lastIndex() + 1 : index;
    }
    return list.item(index);
  }

  /** The same way by names instead of numbers, as far as names tell items apart. */
  static PlanPath lasting(PlanPath at, Entry plan) {
    PlanPath way = PlanPath.ROOT;
    PlanPath lasting = PlanPath.ROOT;
    for (PlanPath.Step step : at.steps()) {
      String name = NAMES.getOrDefault(way.steps().isEmpty() ? "" : way.lastKey(), "");
      way = way.then(step);
      Optional<PlanPath.Named> named = Optional.empty();
      if (step instanceof PlanPath.Item && !name.isEmpty()) {
        PlanPath item = way;
        PlanPath list = lasting;
        named =
            way.key(name)
                .textIn(plan)
                .map(text -> new PlanPath.Named(name, text.text().strip()))
                .filter(one -> list.in(plan).then(one).in(plan).equals(item));
      }
      lasting = lasting.then(named.isPresent() ? named.get() : step);
    }
    return lasting;
  }
}
