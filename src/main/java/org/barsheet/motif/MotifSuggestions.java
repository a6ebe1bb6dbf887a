package org.barsheet.motif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/** Finds motifs that nobody named: figures that a score keeps coming back to. */
public final class MotifSuggestions {

  private static final int LOOKED_AT = 400;
  private static final int COUNTED = 16;
  private static final int SHOWN = 10;
  private static final int MOST_QUARTERS = 16;

  private final Score score;
  private final MelodyLines lines;
  private final RepeatedFigures figures;

  private MotifSuggestions(Score score) {
    this.score = score;
    this.lines = new MelodyLines(score);
    this.figures = new RepeatedFigures(lines);
  }

  /** At most ten, the most telling first: long, varied figures that return often. */
  public static List<Suggestion> of(Score score) {
    return new MotifSuggestions(score).suggestions();
  }

  private record Counted(Suggestion suggestion, double gain) {}

  private List<Suggestion> suggestions() {
    OccurrenceFinder finder = OccurrenceFinder.of(score);
    List<Counted> counted = new ArrayList<>();
    for (RepeatedFigures.Figure figure : chosen()) {
      List<MotifNote> line = line(figure);
      Motif motif = new Motif("", List.of(line), Accent.FIRST, Match.TONAL, Set.of());
      List<Long> returns = finder.find(motif).stream().map(Occurrence::startTick).toList();
      int part = lines.note(figure.places().get(0)).part();
      if (returns.size() > 1) {
        counted.add(
            new Counted(
                new Suggestion(Notes.print(line), part, returns),
                figures.gain(returns.size(), figure.bits())));
      }
    }
    counted.sort(Comparator.comparingDouble((Counted c) -> -c.gain()));
    return counted.stream().map(Counted::suggestion).limit(SHOWN).toList();
  }

  /** The best figures of which none holds half of another's notes. */
  private List<RepeatedFigures.Figure> chosen() {
    List<RepeatedFigures.Figure> chosen = new ArrayList<>();
    Set<Integer> taken = new HashSet<>();
    for (RepeatedFigures.Figure figure : figures.ranked().stream().limit(LOOKED_AT).toList()) {
      Set<Integer> own = new HashSet<>();
      for (int place : figure.places()) {
        for (int i = place; i <= place + figure.steps(); i++) {
          own.add(i);
        }
      }
      long shared = own.stream().filter(taken::contains).count();
      if (2 * shared <= own.size()
          && span(figure) <= (long) MOST_QUARTERS * score.ticksPerQuarter()) {
        chosen.add(figure);
        taken.addAll(own);
      }
      if (chosen.size() == COUNTED) {
        break;
      }
    }
    return chosen;
  }

  private long span(RepeatedFigures.Figure figure) {
    int first = figure.places().get(0);
    return lines.note(first + figure.steps()).onTick() - lines.note(first).onTick();
  }

  private List<MotifNote> line(RepeatedFigures.Figure figure) {
    int first = figure.places().get(0);
    List<Note> notes = new ArrayList<>();
    for (int i = first; i <= first + figure.steps(); i++) {
      notes.add(lines.note(i));
    }
    return new HeardLine(notes, score.ticksPerQuarter()).notes();
  }
}
