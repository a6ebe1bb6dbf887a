package org.barsheet.suggestions;

import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.BeginningsFinder;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.HeardLine;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.motif.Sounding;
import org.barsheet.notation.WrittenMusic;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/**
 * Finds motifs that nobody named: figures that a score keeps coming back to.
 *
 * <p>In a score of more than 40,000 notes figures and their beginnings are compared by how often
 * they return in {@link Passages} of it, and only those that are suggested are counted throughout.
 */
public final class MotifSuggestions {

  private static final int LOOKED_AT = 400;
  private static final int COUNTED = 16;
  private static final int SHOWN = 20;
  private static final int MOST_QUARTERS = 16;
  private static final int MOST_NOTES = 24;
  private static final int FEWEST_NOTES = 4;
  private static final int BEGINNINGS = 8;

  /** Held notes are written in eighths of a quarter note. */
  private static final int NEAT = 8;

  /** A grace note is shorter than this division of a quarter note. */
  private static final int GRACE = 16;

  /** A theme is taken to open a piece if it begins within so many quarter notes. */
  private static final int OPENING_QUARTERS = 8;

  /** What opens the piece and returns comes no later than this. */
  private static final int OPENING_RANK = 2;

  private final WrittenMusic written;
  private final Score score;
  private final MelodyLines lines;
  private final RepeatedFigures figures;
  private final BeginningsFinder everywhere;
  private final BeginningsFinder finder;

  /** How many times more notes the score has than the passages that figures are compared in. */
  private final double share;

  private MotifSuggestions(Score played) {
    this.written = WrittenMusic.of(played);
    this.score = written.score();
    this.lines = new MelodyLines(score);
    this.figures = new RepeatedFigures(lines);
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
        Notes.print(lastWritten(neat(one.line()))),
        one.returns().get(0).part(),
        one.returns().stream().map(found -> written.played(found.startTick())).toList(),
        one.figure().goesRound());
  }

  /** The line with every note but the last held to the end of the eighth of a beat it fills. */
  private static List<MotifNote> neat(List<MotifNote> line) {
    List<MotifNote> neat = new ArrayList<>();
    for (MotifNote note : line) {
      double eighths = note.length().doubleValue() * NEAT;
      long whole = (long) Math.ceil(eighths);
      boolean fills = 4 * eighths >= 3 * whole && neat.size() + 1 < line.size();
      neat.add(
          fills && !isOnThirds(note)
              ? new MotifNote(note.onset(), BigFraction.of((int) whole, NEAT), note.pitch())
              : note);
    }
    return neat;
  }

  private static boolean isOnThirds(MotifNote note) {
    return note.length().getDenominator().intValue() % 3 == 0
        && note.length().getDenominator().intValue() <= 12;
  }

  /**
   * The line with its last note as it may have been written: players and programs let a note go a
   * little early, and nothing follows that would tell. At most an eighth is added or taken.
   */
  private static List<MotifNote> lastWritten(List<MotifNote> line) {
    MotifNote last = line.get(line.size() - 1);
    BigFraction sixteenths = last.length().multiply(4);
    BigFraction written = BigFraction.of(Math.round(sixteenths.doubleValue()), 4);
    BigFraction off = written.subtract(last.length()).abs();
    if (off.multiply(8).compareTo(last.length()) > 0) {
      return line;
    }
    List<MotifNote> neat = new ArrayList<>(line.subList(0, line.size() - 1));
    neat.add(new MotifNote(last.onset(), written, last.pitch()));
    return neat;
  }

  private List<Suggestion> suggestions() {
    List<RepeatedFigures.Figure> looked = new ArrayList<>(chosen());
    looked.addAll(openings());
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
    List<List<MotifNote>> written = beginnings.stream().map(this::line).toList();
    List<List<Sounding>> returns = finder.find(written);
    Optional<Counted> best = Optional.empty();
    for (int i = 0; i < beginnings.size(); i++) {
      best = better(best, counted(beginnings.get(i), written.get(i), returns.get(i), share));
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
    long last = begins + (long) OPENING_QUARTERS * score.ticksPerQuarter();
    List<RepeatedFigures.Figure> openings = new ArrayList<>();
    int part = -1;
    for (int i = 0; i < lines.size(); i++) {
      boolean isFirst = lines.note(i).part() != part && lines.note(i).onTick() < last;
      if (isFirst && lines.onTop(i, 1) == 1 && lines.reach(i) + 1 >= FEWEST_NOTES) {
        part = lines.note(i).part();
        openings.add(figures.figure(List.of(i), phrase(i)));
      }
    }
    return openings;
  }

  private int phrase(int first) {
    long end = lines.note(first).onTick() + (long) MOST_QUARTERS * score.ticksPerQuarter();
    int steps = FEWEST_NOTES - 1;
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

  private List<MotifNote> line(RepeatedFigures.Figure figure) {
    int first = figure.places().get(0);
    List<Note> notes = new ArrayList<>();
    for (int i = first; i <= first + figure.steps(); i++) {
      notes.add(lines.note(i));
    }
    List<Note> plain = notes.stream().filter(note -> !isGrace(note)).collect(toList());
    return new HeardLine(plain.size() < FEWEST_NOTES ? notes : plain, score.ticksPerQuarter())
        .notes();
  }

  /** Whether a note is too short to be more than an ornament of the next. */
  private boolean isGrace(Note note) {
    return GRACE * note.lengthTicks() < score.ticksPerQuarter();
  }
}
