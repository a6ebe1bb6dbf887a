package org.barsheet.align;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.barsheet.align.places.Candidate;
import org.barsheet.cues.Cues;
import org.barsheet.input.Prose;
import org.barsheet.plan.Length;

/**
 * One thing that costs more in one layout than in another.
 *
 * @param more by how much, in millionths
 * @param sentence what it is, in words: asked for where it is the main reason only
 */
record CostItem(long more, Supplier<String> sentence) {

  /** What makes another layout dearer than the best, by the largest single difference. */
  static Optional<String> mainReason(List<Stage> stages, int[] best, int[] other, long filmFrames) {
    List<CostItem> items = new ArrayList<>();
    for (int p = 0; p < stages.size(); p++) {
      boolean same = best[p] == other[p] && (p + 1 == best.length || best[p + 1] == other[p + 1]);
      if (!same) {
        items.addAll(differences(stages, p, best, other, filmFrames));
      }
    }
    return items.stream()
        .filter(item -> item.more() > 0)
        .max(Comparator.comparingLong(CostItem::more))
        .map(item -> item.sentence().get());
  }

  /** Where one panel's part of two layouts differs in cost. */
  private static List<CostItem> differences(
      List<Stage> stages, int p, int[] best, int[] other, long filmFrames) {
    Stage stage = stages.get(p);
    long bestEnd = end(stages, p, best, filmFrames);
    long otherEnd = end(stages, p, other, filmFrames);
    List<CostItem> items = new ArrayList<>();
    long choice = stage.choiceCost(other[p]) - stage.choiceCost(best[p]);
    items.add(new CostItem(choice, () -> choice(stage, other[p])));
    long length = stage.lengthCost(other[p], otherEnd) - stage.lengthCost(best[p], bestEnd);
    items.add(new CostItem(length, () -> length(stage, best[p], other[p], bestEnd, otherEnd)));
    long squeeze = stage.squeezeCost(other[p], otherEnd) - stage.squeezeCost(best[p], bestEnd);
    items.add(new CostItem(squeeze, () -> name(stage) + "'s reveals squeezed"));
    return items;
  }

  private static long end(List<Stage> stages, int p, int[] layout, long filmFrames) {
    return p + 1 < stages.size() ? stages.get(p + 1).cut(layout[p + 1]) : filmFrames;
  }

  private static String name(Stage stage) {
    return "panel " + stage.panel().name();
  }

  private static String choice(Stage stage, int i) {
    Candidate place = stage.candidate(i);
    if (place.isLate()) {
      return name(stage) + " cut too late for its reveals";
    }
    return switch (place.kind()) {
      case RETURN ->
          place.cue().title()
              + (Cues.isCertain(place.cue()) ? " is less certain" : " is only likely");
      case FREE_ON_BAR -> name(stage) + " on a bar line without a mark";
      default -> name(stage) + " off the bar line";
    };
  }

  /** Against the length asked for, or where none is, against the other layout. */
  private static String length(Stage stage, int best, int other, long bestEnd, long otherEnd) {
    long got = otherEnd - stage.cut(other);
    boolean wish = stage.panel().length().filter(length -> !length.isRange()).isPresent();
    long against = wish ? stage.askedFrames(other) : bestEnd - stage.cut(best);
    long away = got - against;
    String words = Prose.count(Math.abs(away), "frame") + (away < 0 ? " shorter" : " longer");
    String asked = stage.panel().length().map(Length::toString).orElse("");
    return name(stage) + " " + words + (wish ? " than the " + asked + " you asked for" : "");
  }
}
