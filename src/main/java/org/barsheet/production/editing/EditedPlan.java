package org.barsheet.production.editing;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.barsheet.input.InputException;
import org.barsheet.plan.edit.Carried;
import org.barsheet.plan.edit.Difference;
import org.barsheet.plan.edit.EditedFile;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanTexts;
import org.barsheet.plan.edit.Values;
import org.barsheet.production.publish.PlanFiles;

/**
 * A plan that is edited: every edit is written at once, whole or not at all, and can be undone and
 * done again. The files as they were before the first edit are kept. What somebody else writes into
 * them is taken in before anything else happens; nothing is written without an edit. Any thread may
 * call it.
 */
public final class EditedPlan {

  /** How often an edit is made anew when somebody else's writing comes between. */
  private static final int TRIES = 5;

  /** What an edit of this plan made of it. */
  private record Step(PlanTexts from, PlanTexts to) {}

  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private final Set<Path> kept = new HashSet<>();
  private final List<Path> keptNames = new ArrayList<>();
  private PlanTexts now;

  private EditedPlan(PlanTexts now) {
    this.now = now;
  }

  /**
   * Begins to edit a plan.
   *
   * @throws InputException if it can't be read as keys and values
   */
  public static EditedPlan open(Path plan) {
    return new EditedPlan(PlanTexts.read(plan));
  }

  /** What the plan's files held when they were last looked at. */
  public synchronized PlanTexts now() {
    return now;
  }

  /** Where the files are kept as they were before they were first written. */
  public synchronized List<Path> kept() {
    return List.copyOf(keptNames);
  }

  /**
   * Takes in what somebody else wrote.
   *
   * @return whether anybody did
   * @throws InputException if the files can't be read as keys and values; they stay as they are,
   *     and so does {@link #now}
   */
  public synchronized boolean look() {
    PlanTexts there = PlanTexts.read(now.plan());
    boolean changed = !there.isSameAs(now);
    now = changed ? there : now;
    return changed;
  }

  public synchronized boolean canUndo() {
    return !done.isEmpty();
  }

  public synchronized boolean canRedo() {
    return !undone.isEmpty();
  }

  /** Makes an edit in the plan as it is now. */
  public synchronized Outcome make(PlanEdit edit) {
    look();
    return make(edit, now);
  }

  /**
   * Makes an edit.
   *
   * @param seen the plan as the person saw it
   * @return a question where somebody else changed the same place since
   * @throws InputException if the edit can't be made alone, if the plan could no longer be
   *     understood with it, or if the files can't be read or written
   * @throws IllegalArgumentException if it leads nowhere in what the person saw
   */
  public synchronized Outcome make(PlanEdit edit, PlanTexts seen) {
    look();
    PlanTexts before = now;
    Outcome outcome = written(edit, seen);
    if (outcome instanceof Outcome.Written) {
      done.push(new Step(before, now));
      undone.clear();
    }
    return outcome;
  }

  /** Takes the last edit back: to the byte, unless somebody else has written meanwhile. */
  public synchronized Outcome undo() {
    return takeBack(done, undone);
  }

  /** Makes the edit again that was undone last. */
  public synchronized Outcome redo() {
    return takeBack(undone, done);
  }

  private Outcome takeBack(Deque<Step> steps, Deque<Step> others) {
    if (steps.isEmpty()) {
      return new Outcome.Unchanged();
    }
    look();
    PlanTexts before = now;
    Step step = steps.peek();
    Outcome outcome =
        now.isSameAs(step.to())
            ? write(step.from())
            : written(new Difference(step.to().tree(), step.from().tree()), step.to());
    steps.pop();
    if (outcome instanceof Outcome.Written) {
      others.push(new Step(before, now));
    }
    return outcome;
  }

  private Outcome written(PlanEdit edit, PlanTexts seen) {
    for (int again = TRIES; ; again--) {
      Carried carried = now.carried(edit, seen);
      if (!carried.clashes().isEmpty() && !now.isSameAs(seen)) {
        return Questions.of(new Difference(seen.tree(), seen.with(edit).tree()), carried);
      }
      PlanTexts after = now.with(now.isSameAs(seen) ? edit : plan -> carried.edits());
      NewProblems.refuse(now, after);
      try {
        return write(after);
      } catch (InputException refused) {
        if (again == 0 || !look()) {
          throw refused;
        }
      }
    }
  }

  private Outcome write(PlanTexts after) {
    List<EditedFile> files = after.since(now);
    if (files.isEmpty() && Values.areSame(after.tree(), now.tree())) {
      return new Outcome.Unchanged();
    }
    List<EditedFile> first = files.stream().filter(file -> !kept.contains(file.file())).toList();
    keptNames.addAll(PlanFiles.write(files, first));
    first.forEach(file -> kept.add(file.file()));
    now = after;
    return new Outcome.Written(now);
  }
}
