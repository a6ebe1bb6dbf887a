package org.barsheet.ticks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.barsheet.input.Prose;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;

/** What people have to be told of their ticks. */
public final class TakenFindings {

  private final Taken taken;
  private final Findings findings = new Findings();

  private TakenFindings(Taken taken) {
    this.taken = taken;
  }

  /** All of them, worst first. */
  public static List<Finding> of(Taken taken) {
    return new TakenFindings(taken).all();
  }

  private List<Finding> all() {
    if (!taken.disputed().isEmpty()) {
      add(
          Severity.WARNING,
          "workbook and phone disagree on "
              + Prose.listed(taken.disputed())
              + ": one says taken, the other again",
          "put one of them right; until then they count as to take again");
    }
    taken.unread().forEach(one -> add(Severity.WARNING, one.sentence(), one.remedy()));
    if (!taken.lost().isEmpty()) {
      add(
          Severity.WARNING,
          "the plan has changed: "
              + Prose.count(taken.lost().size(), "photograph")
              + " that "
              + (taken.lost().size() == 1 ? "was" : "were")
              + " ticked can't be used any more: "
              + Prose.listed(taken.lost()),
          "keep the files, and take the photographs that replace them");
    }
    if (!taken.renamed().isEmpty()) {
      List<String> pairs = new ArrayList<>();
      for (Map.Entry<String, String> pair : taken.renamed().entrySet()) {
        pairs.add(pair.getKey() + " is now " + pair.getValue());
      }
      add(
          Severity.REMARK,
          Prose.count(pairs.size(), "ticked photograph")
              + (pairs.size() == 1 ? " has a new name: " : " have new names: ")
              + Prose.listed(pairs),
          "rename the files, from the last to the first");
    }
    for (Retake retake : taken.retakes()) {
      add(Severity.WARNING, "take again: " + retake.which(), retake.words());
    }
    return findings.worstFirst();
  }

  private void add(Severity severity, String sentence, String remedy) {
    findings.add(severity, Concerns.ANIMATOR, "", sentence, remedy);
  }
}
