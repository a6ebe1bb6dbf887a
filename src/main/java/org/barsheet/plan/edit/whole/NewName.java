package org.barsheet.plan.edit.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.edit.TreeEdit;
import org.barsheet.plan.source.Entry;

/**
 * Another name for something of the plan, there and wherever else the plan names it.
 *
 * @param of what bears the name
 * @param before as it is
 * @param now as it is to be
 */
public record NewName(Of of, String before, String now) implements PlanEdit {

  /** What bears a name. */
  public enum Of {
    MOTIF,
    OPENING,
    PERFORMER,
    MODEL,
    PANEL
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.barsheet.input.InputException if something else of its kind is called so
   */
  @Override
  public List<TreeEdit> in(Entry.Keyed plan) {
    checkFree(plan);
    List<TreeEdit> edits = new ArrayList<>();
    for (NamingText naming : NamingText.all(plan)) {
      renamed(naming).ifPresent(text -> edits.add(new TreeEdit.Put(naming.at(), text)));
    }
    for (PlanPath own : tables()) {
      if (own.key(before).entryIn(plan).isPresent()) {
        edits.add(new TreeEdit.Rename(own.key(before), now));
      }
    }
    return edits;
  }

  private void checkFree(Entry.Keyed plan) {
    List<PlanPath> taken = new ArrayList<>(tables().stream().map(it -> it.key(now)).toList());
    if (of == Of.PANEL) {
      taken.add(PlanPath.ROOT.key("panels").named("panel", now));
    }
    for (PlanPath own : taken) {
      Optional<Entry> there = own.in(plan).entryIn(plan);
      if (there.isPresent() && !now.equals(before)) {
        throw Refusal.at(there.get(), "'" + now + "' is already there", "choose another name");
      }
    }
  }

  /** Tables with its name as a key. */
  private List<PlanPath> tables() {
    PlanPath root = PlanPath.ROOT;
    return switch (of) {
      case MOTIF -> List.of(root.key("motifs"));
      case OPENING -> List.of(root.key("openings"));
      case PERFORMER -> List.of(root.key("performers"), root.key("clips"));
      case MODEL -> List.of(root.key("artwork").key("models"));
      case PANEL -> List.of();
    };
  }

  /** The text with the new name, if it has the old one. */
  private Optional<String> renamed(NamingText naming) {
    String text = naming.text().strip();
    if (naming.place()) {
      return of == Of.MOTIF
          ? PlaceWords.motif(text, before, now)
          : of == Of.PANEL ? PlaceWords.panel(text, before, now) : Optional.empty();
    }
    return naming.of() == of && text.equals(before) ? Optional.of(now) : Optional.empty();
  }
}
