package org.barsheet.suggestions;

import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.motif.Sounding;
import org.barsheet.motif.find.BeginningsFinder;
import org.barsheet.notation.WrittenMusic;
import org.barsheet.score.Score;

/**
 * Finds motifs that nobody named: figures that a score keeps coming back to.
 *
 * <p>In a score of more than 40,000 notes figures and their beginnings are compared by how often
 * they return in {@link Passages} of it, and only those that are suggested are counted throughout.
 */
public final class MotifSuggestions {

  private static final int SHOWN = 20;
  private static final int BEGINNINGS = 8;

  /** A theme is taken to open a piece if it begins within so many quarter notes. */
  static final int OPENING_QUARTERS = 8;

  /** What opens the piece and returns comes no later than this. */
  private static final int OPENING_RANK = 2;

  private final WrittenMusic written;
  private final Score score;
  private final MelodyLines lines;
  private final RepeatedFigures figures;
  private final FigureLine figureLine;
  private final BeginningsFinder everywhere;
  private final BeginningsFinder finder;

  /** How many times more notes the score has than the passages that figures are compared in. */
  private final double share;

  private MotifSuggestions(Score played) {
    this.written = WrittenMusic.of(played);
    this.score = written.score();
    this.lines = new MelodyLines(score);
    this.figures = new RepeatedFigures(lines);
    this.figureLine = new FigureLine(lines, score.ticksPerQuarter());
    this.everywhere = BeginningsFinder.of(score);
    Score passages = Passages.of(score);
    this.finder = everywhere.within(passages);
    this.share = (double) score.notes().size() / Math.max(1, passages.notes().size());
  }

  /** At most twenty, the most telling first: long, varied figures in the lead that return often. */
  public static List<Suggestion> of(Score score) {
    return new MotifSuggestions(score).suggestions();
  }

  private record Counted(
      RepeatedFigures.Figure figure, List<MotifNote> line, List<Sounding> returns, double gain) {

    /** Whether half of its returns lie within returns of another. */
    boolean repeats(Counted better) {
      Coverage coverage = new Coverage(better.returns());
      long within = returns.stream().filter(coverage::covers).count();
      return 2 * within >= returns.size();
    }
  }

  private Suggestion suggestion(Counted one) {
    return new Suggestion(
        Notes.print(FigureLine.neat(one.line())),
        one.returns().get(0).part(),
        one.returns().stream().map(found -> written.played(found.startTick())).toList(),
        one.figure().goesRound());
  }

  private List<Suggestion> suggestions() {
    List<RepeatedFigures.Figure> looked = new LikelyFigures(score, lines, figures).all();
    List<Counted> shown =
        apart(looked.parallelStream().flatMap(figure -> count(figure).stream()).collect(toList()));
    if (finder != everywhere) {
      shown =
          apart(shown.parallelStream().flatMap(one -> everywhere(one).stream()).collect(toList()));
    }
    return shown.stream().map(this::suggestion).toList();
  }

  /** The best, the most rewarding first, without those that repeat a better one. */
  private List<Counted> apart(List<Counted> counted) {
    counted.sort(
        Comparator.comparing((Counted c) -> c.figure().goesRound())
            .thenComparingDouble(c -> -c.gain()));
    putOpeningForward(counted);
    List<Counted> apart = new ArrayList<>();
    for (Counted next : counted) {
      if (apart.size() < SHOWN && apart.stream().noneMatch(next::repeats)) {
        apart.add(next);
      }
    }
    return apart;
  }

  /** The same counted throughout the score. */
  private Optional<Counted> everywhere(Counted one) {
    return counted(one.figure(), one.line(), everywhere.find(List.of(one.line())).get(0), 1);
  }

  /**
   * Counts a figure's returns as the finder does, tonal and changed ones too, and those of its
   * beginnings: where what follows a theme came along with it a few times, the theme alone comes
   * more often. About eight beginnings are looked at, and then those about the best.
   */
  private Optional<Counted> count(RepeatedFigures.Figure figure) {
    int stride = Math.max(1, figure.steps() / BEGINNINGS);
    List<Integer> far = new ArrayList<>();
    for (int steps = figure.steps(); steps >= RepeatedFigures.FEWEST_STEPS; steps -= stride) {
      far.add(steps);
    }
    Optional<Counted> best = best(figure, far);
    if (best.isEmpty()) {
      return best;
    }
    int around = best.get().figure().steps();
    List<Integer> near =
        IntStream.rangeClosed(around - stride + 1, around + stride - 1)
            .map(steps -> 2 * around - steps)
            .filter(steps -> steps != around)
            .filter(steps -> steps >= RepeatedFigures.FEWEST_STEPS && steps <= figure.steps())
            .boxed()
            .toList();
    return better(best, best(figure, near));
  }

  private static Optional<Counted> better(Optional<Counted> one, Optional<Counted> other) {
    boolean isBetter =
        other.isPresent() && (one.isEmpty() || other.get().gain() > one.get().gain());
    return isBetter ? other : one;
  }

  /** The most rewarding of a figure's beginnings of so many steps, the longest first. */
  private Optional<Counted> best(RepeatedFigures.Figure whole, List<Integer> steps) {
    List<RepeatedFigures.Figure> beginnings =
        steps.stream().map(some -> figures.figure(whole.places(), some)).toList();
    List<List<MotifNote>> heard = beginnings.stream().map(figureLine::of).toList();
    List<List<Sounding>> returns = finder.find(heard);
    Optional<Counted> best = Optional.empty();
    for (int i = 0; i < beginnings.size(); i++) {
      best = better(best, counted(beginnings.get(i), heard.get(i), returns.get(i), share));
    }
    return best;
  }

  /**
   * A figure with its returns.
   *
   * @param share for each return found how many the whole score is taken to have
   */
  private Optional<Counted> counted(
      RepeatedFigures.Figure figure, List<MotifNote> line, List<Sounding> returns, double share) {
    int certain = certainOneAfterAnother(returns);
    if (certain < 2) {
      return Optional.empty();
    }
    double times = share * certain;
    double gain =
        figures.gain(times, figure.bits()) * figures.prominence(figure.places(), figure.steps());
    return Optional.of(new Counted(figure, line, returns, gain));
  }

  private void putOpeningForward(List<Counted> counted) {
    for (int i = OPENING_RANK + 1; i < counted.size(); i++) {
      if (counted.subList(0, i).stream().noneMatch(this::opens) && opens(counted.get(i))) {
        counted.add(OPENING_RANK, counted.remove(i));
      }
    }
  }

  private boolean opens(Counted one) {
    long begins = score.notes().get(0).onTick();
    boolean early =
        one.returns().get(0).startTick()
            < begins + (long) OPENING_QUARTERS * score.ticksPerQuarter();
    return early && !one.figure().goesRound();
  }

  /**
   * Certain returns of which none begins before the one before it in the same part has ended: an
   * accompaniment that goes round in circles begins anew on every beat and is no motif for that.
   */
  private static int certainOneAfterAnother(List<Sounding> returns) {
    Map<Integer, Long> ends = new HashMap<>();
    int count = 0;
    for (Sounding one : returns) {
      boolean isFree = one.startTick() >= ends.getOrDefault(one.part(), 0L);
      if (one.certainty() == Certainty.CERTAIN && isFree) {
        ends.put(one.part(), one.endTick());
        count++;
      }
    }
    return count;
  }
}
