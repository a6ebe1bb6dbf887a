package org.barsheet.pulse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Measures tempo evidence on the files of {@code performed/perf} and {@code performed/score} in the
 * folder named by the system property {@code evaluation.folder}.
 */
@Tag("evaluate")
class EvidenceEvaluation {

  @Test
  void scores_are_told_from_performances() throws IOException {
    Path folder = Path.of(System.getProperty("evaluation.folder", "")).resolve("performed");
    int wrong = 0;
    for (String kind : List.of("perf", "score")) {
      for (Path file : midiFiles(folder.resolve(kind))) {
        Score score = ScoreReader.read(file);
        TempoEvidence evidence = TempoEvidence.of(score);
        boolean trusted = evidence.score() >= TempoEvidence.TRUSTED;
        boolean meaningless = evidence.verdict() == TempoEvidence.Verdict.UNTRUE;
        wrong += kind.equals("score") ? (trusted ? 0 : 1) : (meaningless ? 0 : 1);
        System.out.printf(
            Locale.ROOT,
            "%s %s %s weak %s%n",
            kind,
            file.getFileName(),
            evidence.verdict() + " " + evidence.sentence(),
            evidence.weakStretches());
        System.out.println("   " + score.readingNotes());
      }
    }
    assertThat(wrong).isZero();
  }

  private static List<Path> midiFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".mid")).sorted().toList();
    }
  }
}
