package org.barsheet.suggestions;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.barsheet.motif.Notes;
import org.barsheet.score.Note;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Prints in how many sonata movements, of the folder {@code performed_more/score} in the folder
 * named by {@code evaluation.folder}, what the top line plays in the first four bars is among the
 * first five suggestions. Every other file is for choosing limits, the others are for judging them.
 */
@Tag("evaluate")
class FirstThemeEvaluation {

  private static final int BARS = 4;
  private static final int FIRST = 5;

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void first_themes_among_the_first_suggestions_are_counted(int half) {
    List<Path> files = sonatas();
    int hits = 0;
    int all = 0;
    for (int i = half; i < files.size(); i += 2) {
      Score score = ScoreReader.read(files.get(i));
      List<Suggestion> suggestions = MotifSuggestions.of(score);
      boolean isHit = suggestions.stream().limit(FIRST).anyMatch(one -> opens(score, one));
      hits += isHit ? 1 : 0;
      all++;
      if (!isHit && Boolean.getBoolean("figures.talk")) {
        System.out.println(
            "not suggested "
                + files.get(i).getFileName()
                + " "
                + suggestions.stream()
                    .map(
                        s ->
                            s.returns().size()
                                + "x bar "
                                + score.bars().barAt(s.returns().get(0)).number()
                                + " "
                                + s.part()
                                + ": "
                                + s.notes())
                    .toList());
      }
    }
    System.out.printf("first themes among five, half %d: %d of %d%n", half, hits, all);
    assertThat(all).isPositive();
  }

  /** Whether a suggestion returns in the first bars with nothing above its first note. */
  private static boolean opens(Score score, Suggestion one) {
    long end = score.bars().bars().get(Math.min(BARS, score.bars().bars().size() - 1)).endTick();
    return one.returns().stream().anyMatch(tick -> tick < end && isOnTop(score, one, tick));
  }

  private static boolean isOnTop(Score score, Suggestion one, long tick) {
    int highest =
        score.notes().stream()
            .filter(note -> note.onTick() == tick)
            .mapToInt(Note::pitch)
            .max()
            .orElse(-1);
    int first = Notes.parse(one.notes()).get(0).pitch();
    return Math.floorMod(highest - first, 12) == 0 || tick != one.returns().get(0);
  }

  private static List<Path> sonatas() {
    Path folder =
        Path.of(System.getProperty("evaluation.folder", "")).resolve("performed_more/score");
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().contains("sonata")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
