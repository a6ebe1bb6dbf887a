package org.barsheet.suggestions;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.barsheet.score.Score;

/** The figures of a score whose returns are worth counting. */
final class LikelyFigures {

  private static final int LOOKED_AT = 400;
  private static final int COUNTED = 16;
  private static final int MOST_QUARTERS = 16;
  private static final int MOST_NOTES = 24;

  private final Score score;
  private final MelodyLines lines;
  private final RepeatedFigures figures;

  LikelyFigures(Score score, MelodyLines lines, RepeatedFigures figures) {
    this.score = score;
    this.lines = lines;
    this.figures = figures;
  }

  /** Those that repeat, and what the piece opens with. */
  List<RepeatedFigures.Figure> all() {
    List<RepeatedFigures.Figure> all = new ArrayList<>(chosen());
    all.addAll(openings());
    return all;
  }

  /** The best figures of which none holds half of another's notes. */
  private List<RepeatedFigures.Figure> chosen() {
    List<RepeatedFigures.Figure> chosen = new ArrayList<>();
    BitSet taken = new BitSet();
    for (RepeatedFigures.Figure figure : figures.ranked().stream().limit(LOOKED_AT).toList()) {
      boolean isShort = span(figure) <= (long) MOST_QUARTERS * score.ticksPerQuarter();
      if (isShort && chosen.size() < COUNTED) {
        BitSet own = notes(figure);
        BitSet shared = (BitSet) own.clone();
        shared.and(taken);
        if (2 * shared.cardinality() <= own.cardinality()) {
          chosen.add(figure);
          taken.or(own);
        }
      }
    }
    return chosen;
  }

  private static BitSet notes(RepeatedFigures.Figure figure) {
    BitSet notes = new BitSet();
    for (int place : figure.places()) {
      notes.set(place, place + figure.steps() + 1);
    }
    return notes;
  }

  /**
   * What the leading line opens with: often a theme, though it may come no more than twice. Of each
   * part that leads in the first bars its first phrase, as far as it can be one.
   */
  private List<RepeatedFigures.Figure> openings() {
    long begins = score.notes().isEmpty() ? 0 : score.notes().get(0).onTick();
    long last = begins + (long) MotifSuggestions.OPENING_QUARTERS * score.ticksPerQuarter();
    List<RepeatedFigures.Figure> openings = new ArrayList<>();
    int part = -1;
    for (int i = 0; i < lines.size(); i++) {
      boolean isFirst = lines.note(i).part() != part && lines.note(i).onTick() < last;
      if (isFirst && lines.onTop(i, 1) == 1 && lines.reach(i) + 1 >= FigureLine.FEWEST_NOTES) {
        part = lines.note(i).part();
        openings.add(figures.figure(List.of(i), phrase(i)));
      }
    }
    return openings;
  }

  private int phrase(int first) {
    long end = lines.note(first).onTick() + (long) MOST_QUARTERS * score.ticksPerQuarter();
    int steps = FigureLine.FEWEST_NOTES - 1;
    while (steps < Math.min(MOST_NOTES - 1, lines.reach(first))
        && lines.note(first + steps + 1).onTick() < end) {
      steps++;
    }
    return steps;
  }

  private long span(RepeatedFigures.Figure figure) {
    int first = figure.places().get(0);
    return lines.note(first + figure.steps()).onTick() - lines.note(first).onTick();
  }
}
