package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import org.barsheet.motif.Match;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Sounding;
import org.barsheet.motif.match.Beginning;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.ChainMatcher;
import org.barsheet.motif.match.ChainSearch;
import org.barsheet.motif.match.MatchRules;
import org.barsheet.motif.match.NoteField;
import org.barsheet.motif.match.Pattern;
import org.barsheet.motif.match.Transform;
import org.barsheet.score.Score;

/**
 * Finds where a line and its beginnings return, tonal returns and changed ones too, in one search.
 *
 * <p>It finds what {@link OccurrenceFinder} finds. Only in long and thick scores is it stricter:
 * there it leaves out returns that are not certain or not on time, because chance alone puts
 * together thousands of them. How many grows, like the time that it takes to look at them, with the
 * pairs of notes that sound at one moment.
 */
public final class BeginningsFinder {

  /** A moment is an eighth of a quarter note. */
  private static final int MOMENTS = 8;

  private static final long MOST_PAIRS_FOR_LIKELY = 100_000;

  private final Score score;
  private final NoteField field;
  private final SoundingReader reader;
  private final MatchRules rules;
  private final Judgment judgment;
  private final ToIntFunction<Pattern> budget;

  private BeginningsFinder(Score score, NoteField field, boolean isThick) {
    this.score = score;
    this.field = field;
    this.reader = new SoundingReader(score, field, tick -> tick);
    this.rules = isThick ? MatchRules.TONAL_ON_TIME : MatchRules.of(Match.TONAL);
    if (isThick) {
      this.judgment = Certainties::of;
      this.budget = Certainties::certainBudget;
    } else {
      LineJudgment lines = new LineJudgment(field, score.ticksPerQuarter());
      this.judgment = lines;
      this.budget = lines::budget;
    }
  }

  public static BeginningsFinder of(Score score) {
    NoteField field = NoteField.of(score);
    return new BeginningsFinder(score, field, pairs(score, field) > MOST_PAIRS_FOR_LIKELY);
  }

  /** One that looks in some of the score only, as strictly as this one does in all of it. */
  public BeginningsFinder within(Score some) {
    boolean isThick = rules == MatchRules.TONAL_ON_TIME;
    boolean isAll = some.notes().size() == score.notes().size();
    return isAll ? this : new BeginningsFinder(some, NoteField.of(some), isThick);
  }

  /** For each moment the square of how many notes begin there, all together. */
  private static long pairs(Score score, NoteField field) {
    long moment = Math.max(1, score.ticksPerQuarter() / MOMENTS);
    long pairs = 0;
    int first = 0;
    for (int note = 0; note < field.size(); note++) {
      boolean same =
          (field.onTick(note) + moment / 2) / moment == (field.onTick(first) + moment / 2) / moment;
      first = same ? first : note;
      pairs += 2L * (note - first) + 1;
    }
    return pairs;
  }

  /**
   * The returns of each line, in order of time.
   *
   * @param lines as a rule each the beginning of the line before it; others cost a search more
   */
  public List<List<Sounding>> find(List<List<MotifNote>> lines) {
    List<List<Sounding>> found = new ArrayList<>();
    List<Beginning> together = new ArrayList<>();
    for (List<MotifNote> line : lines) {
      Pattern pattern = Pattern.of(line, Transform.AS_GIVEN, score.ticksPerQuarter());
      if (!together.isEmpty() && !isSoughtWith(together.get(0).pattern(), pattern)) {
        found.addAll(search(together));
        together.clear();
      }
      together.add(new Beginning(pattern, budget.applyAsInt(pattern)));
    }
    found.addAll(search(together));
    return found;
  }

  private boolean isSoughtWith(Pattern whole, Pattern pattern) {
    return pattern.begins(whole)
        && pattern.size() > ChainSearch.MOST_LOST_AT_AN_END + 1
        && tolerance(pattern) == tolerance(whole);
  }

  private long tolerance(Pattern pattern) {
    return pattern.tolerance(score.ticksPerQuarter());
  }

  private List<List<Sounding>> search(List<Beginning> beginnings) {
    if (beginnings.isEmpty()) {
      return List.of();
    }
    long tolerance = tolerance(beginnings.get(0).pattern());
    return new ChainMatcher(field, beginnings, rules, tolerance)
        .chains().stream().map(this::soundings).toList();
  }

  private List<Sounding> soundings(List<Chain> chains) {
    List<Chain> wanted = chains.stream().filter(one -> judgment.of(one).isPresent()).toList();
    return HitMerger.ofWritten(field, score.ticksPerQuarter()).merge(wanted, List.of()).stream()
        .flatMap(hit -> reader.sounding(hit, judgment).stream())
        .toList();
  }
}
