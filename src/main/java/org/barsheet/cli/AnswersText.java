package org.barsheet.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.barsheet.cues.Cue;
import org.barsheet.production.Answers;
import org.barsheet.timing.PanelChange;
import org.barsheet.timing.Shot;
import org.barsheet.timing.WholeAnswer;

/** The best few whole answers: what each would change, and what it would cost. */
final class AnswersText {

  private AnswersText() {}

  static void print(Answers answers, int asked, PrintWriter out) {
    List<WholeAnswer> all = answers.answers();
    for (int i = 0; i < all.size(); i++) {
      out.println(heading(i + 1, all.get(i)));
      all.get(i).sentences().forEach(sentence -> out.println("  " + sentence));
    }
    if (all.size() < asked) {
      out.println(
          all.size() == 1
              ? "There is no other answer: every panel is where it must be."
              : "There are no more answers.");
    }
    out.flush();
  }

  private static String heading(int number, WholeAnswer answer) {
    if (number == 1) {
      return "answer 1: the best, as the sheets show it";
    }
    if (answer.isFreeChoice()) {
      return "answer " + number + ": as good, a free choice";
    }
    String why = answer.why().isEmpty() ? "" : ": " + answer.why();
    return "answer "
        + number
        + ": costs "
        + cost(answer).max(new BigDecimal("0.1"))
        + " more"
        + why;
  }

  private static BigDecimal cost(WholeAnswer answer) {
    return BigDecimal.valueOf(answer.more()).setScale(1, RoundingMode.HALF_UP);
  }

  /** One row for each panel of each answer. */
  static Table table(Answers answers) {
    Table table =
        new Table(
            "answer", "more", "why", "panel", "cue", "bar", "timecode", "frame", "frames", "later");
    for (int i = 0; i < answers.answers().size(); i++) {
      WholeAnswer answer = answers.answers().get(i);
      for (Shot shot : answer.shots()) {
        Cue cue = shot.cue();
        table.add(
            i + 1,
            BigDecimal.valueOf(answer.more()).setScale(3, RoundingMode.HALF_UP),
            answer.why(),
            shot.panel().name(),
            cue.title(),
            cue.place().bar(),
            answers.film().timecode(shot.frames().start()).toString(),
            shot.frames().start(),
            shot.frames().length(),
            later(answer, shot));
      }
    }
    return table;
  }

  /** Frames a panel begins later than in the best answer. */
  private static long later(WholeAnswer answer, Shot shot) {
    return answer.differences().stream()
        .filter(change -> change.panel().equals(shot.panel().name()))
        .mapToLong(PanelChange::beginsLater)
        .findFirst()
        .orElse(0);
  }
}
