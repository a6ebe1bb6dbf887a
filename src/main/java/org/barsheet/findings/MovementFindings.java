package org.barsheet.findings;

import java.util.List;
import java.util.Objects;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.LargestStep;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.input.Prose;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;

/** What is doubtful about the movements to photograph, whichever shots show them. */
public final class MovementFindings {

  /** A thread from above the hinge pulls a flap no further than upright. */
  private static final double UPRIGHT = 90;

  /** Names told one by one; the cards mark all of them. */
  private final Plan plan;

  private final Findings findings = new Findings();

  public MovementFindings(Plan plan) {
    this.plan = plan;
  }

  /** All of them, worst first. */
  public List<Finding> of(List<Movement> movements) {
    for (Movement movement : movements) {
      addLargestStep(movement);
      addUnheld(movement);
      addThread(movement);
      addUnlike(movement);
    }
    addStandstills(movements);
    return findings.worstFirst();
  }

  private void add(Severity severity, String sentence, String remedy) {
    findings.add(severity, Concerns.ANIMATOR, "", sentence, remedy);
  }

  private void addLargestStep(Movement movement) {
    LargestStep largest = LargestStep.of(movement, plan.workshop().hand());
    if (largest.isWithin()) {
      return;
    }
    String remedy =
        largest.enough().isPresent()
            ? "take " + largest.enough().getAsInt() + " photographs to keep every step within it"
            : "no number of photographs stays within that limit: raise it";
    add(
        plan.workshop().hand().largestStep().isPresent() ? Severity.WARNING : Severity.REMARK,
        movement.name()
            + " jumps "
            + largest.words()
            + " to photograph "
            + largest.photograph()
            + "; its limit is "
            + largest.limitWords()
            + (plan.workshop().hand().largestStep().isPresent()
                ? ""
                : ", an eighth of the movement"),
        remedy);
  }

  /** Some photograph is higher than anything that holds it reaches. */
  private void addUnheld(Movement movement) {
    if (first(movement).heldBy().isEmpty()) {
      return;
    }
    movement.moved().stream()
        .filter(photograph -> photograph.measures().heldBy().isEmpty())
        .findFirst()
        .ifPresent(
            photograph ->
                add(
                    Severity.WARNING,
                    "nothing holds "
                        + movement.name()
                        + " from photograph "
                        + photograph.photograph().number()
                        + ", "
                        + photograph.measures().height().map(mm -> mm + " mm").orElse("")
                        + " above the table",
                    "add a support under held-by: thread from 200 mm above the hinge"));
  }

  private void addThread(Movement movement) {
    boolean past =
        movement.measure() instanceof Measure.Turn turn
            && turn.whole() > UPRIGHT
            && movement.moved().stream()
                .anyMatch(photograph -> photograph.measures().pull().isPresent());
    if (past) {
      add(
          Severity.WARNING,
          movement.name() + " opens past upright; a thread above the hinge can only pull it to 90°",
          "hold it from the other side past 90°, or open it to 90°");
    }
  }

  /** Where a movement is slow, the hand may have nothing to move. */
  private void addStandstills(List<Movement> movements) {
    List<String> still =
        movements.stream()
            .filter(movement -> !(movement.measure() instanceof Measure.Listed))
            .flatMap(movement -> movement.moved().stream())
            .filter(MovedPhotograph::isLikeBefore)
            .map(photograph -> photograph.photograph().name())
            .toList();
    if (!still.isEmpty()) {
      add(
          Severity.REMARK,
          Prose.count(still.size(), "photograph")
              + (still.size() == 1 ? " moves" : " move")
              + " less than a hand can set and look"
              + (still.size() == 1 ? "s" : "")
              + " like the one before: "
              + Prose.listed(still),
          "hold the one before longer, take fewer photographs, or set a finer unit under hand");
    }
  }

  /** One model cannot be flaps of several sizes, or be held in several ways. */
  private void addUnlike(Movement movement) {
    Opening first = first(movement);
    List<String> unlike =
        movement.openings().stream()
            .map(name -> plan.workshop().opening(name).orElseThrow())
            .filter(other -> !isLike(first, other))
            .map(Opening::name)
            .toList();
    if (!unlike.isEmpty()) {
      add(
          Severity.REMARK,
          movement.name()
              + " uses the measurements of "
              + first.name()
              + "; "
              + String.join(", ", unlike)
              + (unlike.size() == 1 ? " has" : " have")
              + " a different size or support",
          "give it its own model if it needs its own photographs");
    }
  }

  private static boolean isLike(Opening one, Opening other) {
    return one.rect().width() == other.rect().width()
        && one.rect().height() == other.rect().height()
        && Objects.equals(one.heldBy(), other.heldBy());
  }

  private Opening first(Movement movement) {
    return plan.workshop().opening(movement.openings().get(0)).orElseThrow();
  }
}
