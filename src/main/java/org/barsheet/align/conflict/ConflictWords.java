package org.barsheet.align.conflict;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.align.conflict.Conflict.Wish;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.input.Problem;
import org.barsheet.input.Prose;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place.Anywhere;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Where;

/** Says in one paragraph what cannot be done, by how much it fails, and what would free it. */
public final class ConflictWords {

  /** Panels told one by one; of more, the first ones and the last. */
  private static final int MOST_PANELS = 8;

  private final AlignerInput input;
  private final Conflicts conflicts;

  public ConflictWords(AlignerInput input, Conflicts conflicts) {
    this.input = input;
    this.conflicts = conflicts;
  }

  /** The conflict as a problem of the plan, at the last of its panels. */
  public Problem problem(Conflict conflict) {
    List<Integer> panels = conflict.panels();
    Where where = panel(panels.get(panels.size() - 1)).where();
    List<String> fixes = new Fixes(input, conflicts).of(conflict);
    return Problem.at(
        where.file(),
        where.position(),
        sentence(conflict),
        fixes.isEmpty() ? "give these panels more room" : String.join("; or ", fixes));
  }

  private Panel panel(int p) {
    return input.panels().get(p);
  }

  private String sentence(Conflict conflict) {
    List<String> items = new ArrayList<>();
    for (int p : conflict.panels()) {
      items.add(item(conflict, p));
    }
    if (items.size() > MOST_PANELS) {
      int more = items.size() - MOST_PANELS + 1;
      List<String> ends = new ArrayList<>(items.subList(0, MOST_PANELS - 2));
      ends.add(more + " more panels");
      ends.add(items.get(items.size() - 1));
      items = ends;
    }
    return list(items) + miss(conflict, items.size());
  }

  private static String miss(Conflict conflict, int panels) {
    String frames = Prose.count(conflict.frames(), "frame");
    if (conflict.frames() > 0 && !conflict.tooLong()) {
      return (panels == 1 ? " leaves " : " leave ") + frames + " empty";
    }
    String fit =
        switch (panels) {
          case 1 -> " doesn't fit";
          case 2 -> " don't both fit";
          default -> " don't all fit";
        };
    return fit + (conflict.frames() == 0 ? "" : ": " + frames + " short");
  }

  /** {@code panel 3 (line 12, on glimmer 1 at bar 3, 3..4 bars long)}. */
  private String item(Conflict conflict, int p) {
    Panel panel = panel(p);
    List<String> details = new ArrayList<>();
    if (!panel.where().position().isEmpty()) {
      details.add(panel.where().position());
    }
    if (conflict.has(p, Wish.Kind.PLACE) && !(panel.cue() instanceof Anywhere)) {
      details.add("on " + panel.cue() + bar(p));
    }
    if (conflict.has(p, Wish.Kind.LENGTH)) {
      details.add(panel.length().orElseThrow() + " long");
    }
    if (conflict.has(p, Wish.Kind.REVEALS)) {
      details.add("with " + list(panel.reveals().stream().map(this::reveal).toList()));
    }
    if (conflict.has(p, Wish.Kind.LOCK)) {
      FrameSpan lock = conflicts.panel(p).lock().orElseThrow();
      details.add("locked on frames " + lock.start() + " to " + (lock.endExclusive() - 1));
    }
    return "panel " + panel.name() + " (" + String.join(", ", details) + ")";
  }

  private String bar(int p) {
    return conflicts
        .panel(p)
        .asked()
        .filter(cue -> cue.kind() != Cue.Kind.BAR)
        .map(cue -> " at " + cue.place())
        .orElse("");
  }

  private String reveal(Reveal reveal) {
    String photographs =
        Prose.count(reveal.photographs(), "photograph") + " of " + reveal.opening();
    return reveal.photographed() ? photographs + ", already photographed" : photographs;
  }

  static String list(List<String> items) {
    int last = items.size() - 1;
    return last < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }
}
