package org.barsheet.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.Motif;
import org.barsheet.motif.Notes;
import org.barsheet.motif.find.OccurrenceFinder;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prints how long motifs are looked for in 200,000 notes, in a program that is warm. */
@Tag("benchmark")
class MotifSearchBenchmark {

  private static final int MOTIFS = 20;
  private static final int NOTES_EACH = 8;
  private static final String[] LETTERS = {"C", "D", "E", "F", "G", "A", "B"};
  private static final String[] LENGTHS = {"4", "8", "8", "16"};

  @TempDir Path folder;

  @Test
  void twentyMotifsInTwoHundredThousandNotes() throws IOException {
    LargeProduction.into(folder);
    Score score = ScoreReader.read(folder.resolve("large.mid"));
    assertThat(score.notes()).hasSize(LargeProduction.NOTES);
    Set<Form> asGiven = Set.of();
    Set<Form> changed = Set.of(Form.INVERTED, Form.AUGMENTED);
    for (int round = 0; round < 2; round++) {
      print("one motif as given and transposed", score, motifs(1, asGiven));
      print("20 motifs in 8 forms, inverted and stretched", score, motifs(MOTIFS, changed));
    }
  }

  private static void print(String what, Score score, List<Motif> motifs) {
    long start = System.nanoTime();
    OccurrenceFinder finder = OccurrenceFinder.of(score);
    int found = motifs.stream().mapToInt(motif -> finder.find(motif).size()).sum();
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf("%-50s %6.2f s, %d found%n", what, seconds, found);
  }

  private static List<Motif> motifs(int count, Set<Form> forms) {
    Random random = new Random(20);
    List<Motif> motifs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<String> notes = new ArrayList<>();
      for (int k = 0; k < NOTES_EACH; k++) {
        String letter = LETTERS[random.nextInt(LETTERS.length)];
        notes.add(letter + (4 + random.nextInt(2)) + "/" + LENGTHS[random.nextInt(4)]);
      }
      motifs.add(
          new Motif(
              "motif " + i,
              List.of(Notes.parse(String.join(" ", notes))),
              Accent.FIRST,
              Match.TONAL,
              forms));
    }
    return motifs;
  }
}
