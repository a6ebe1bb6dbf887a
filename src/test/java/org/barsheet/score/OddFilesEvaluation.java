package org.barsheet.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Reads every file of a folder {@code odd} and holds it against its {@code expected.csv}; the
 * folder above it is named by the system property {@code evaluation.folder}.
 */
@Tag("evaluate")
class OddFilesEvaluation {

  @Test
  void every_odd_file_behaves_as_expected() throws IOException {
    Path folder = Path.of(System.getProperty("evaluation.folder", "")).resolve("odd");
    List<String> wrong = new ArrayList<>();
    for (String line : Files.readAllLines(folder.resolve("expected.csv"))) {
      String[] cells = line.strip().split(",", 9);
      if (!cells[0].equals("file")) {
        wrong.addAll(check(folder.resolve(cells[0]), cells));
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static List<String> check(Path file, String[] cells) {
    List<String> wrong = new ArrayList<>();
    String name = cells[0];
    try {
      Score score = ScoreReader.read(file);
      String got = score.readingNotes().isEmpty() ? "parse" : "warn";
      System.out.println(name + ": " + got + " " + score.readingNotes());
      System.out.println("    " + score.parts());
      require(cells[1].contains(got), name + " should " + cells[1], wrong);
      require(
          cells[2].isEmpty() || Integer.parseInt(cells[2]) == score.notes().size(), name, wrong);
      checkTimes(score, cells, wrong);
    } catch (InputException rejected) {
      System.out.println(name + ": reject " + rejected.problems());
      require(cells[1].contains("reject"), name + ": " + rejected.problems(), wrong);
      require(rejected.problems().toString().contains(name), name + " is not named", wrong);
    }
    return wrong;
  }

  private static void checkTimes(Score score, String[] cells, List<String> wrong) {
    List<Note> notes = score.notes();
    if (!notes.isEmpty()) {
      near(cells[3], score.tempo().secondsAt(notes.get(0).onTick()), cells[0], wrong);
      near(
          cells[4], score.tempo().secondsAt(notes.get(notes.size() - 1).onTick()), cells[0], wrong);
    }
    for (int bar = 1; bar <= 3; bar++) {
      if (!cells[4 + bar].isEmpty()) {
        long tick = score.bars().bars().get(bar).startTick();
        near(cells[4 + bar], score.tempo().secondsAt(tick), cells[0] + " bar " + (bar + 1), wrong);
      }
    }
  }

  private static void near(String cell, Seconds got, String what, List<String> wrong) {
    boolean near = cell.isEmpty() || Math.abs(Double.parseDouble(cell) - got.toDouble()) < 1e-6;
    require(near, what + ": " + cell + " s, got " + got, wrong);
  }

  private static void require(boolean holds, String what, List<String> wrong) {
    if (!holds) {
      wrong.add(what);
    }
  }
}
