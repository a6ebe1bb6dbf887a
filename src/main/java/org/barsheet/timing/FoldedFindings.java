package org.barsheet.timing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.barsheet.input.Prose;
import org.barsheet.timing.Finding.Alike;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** Findings as people read them: of which the same can be said, one sentence tells them all. */
public final class FoldedFindings {

  private FoldedFindings() {}

  private record Key(Severity severity, Concerns concerns, String ofMany, String remedy) {}

  /** In the order of the first of each; errors are never folded. */
  public static List<Finding> of(List<Finding> findings) {
    Map<Object, List<Finding>> groups = new LinkedHashMap<>();
    for (Finding finding : findings) {
      groups.computeIfAbsent(key(finding), key -> new ArrayList<>()).add(finding);
    }
    return groups.values().stream().map(FoldedFindings::folded).toList();
  }

  /** What equal findings share; a finding of its own is equal to no other. */
  private static Object key(Finding finding) {
    if (finding.alike().isEmpty() || finding.severity() == Severity.ERROR) {
      return new Object();
    }
    String ofMany = finding.alike().get().ofMany();
    return new Key(finding.severity(), finding.concerns(), ofMany, finding.remedy());
  }

  private static Finding folded(List<Finding> alike) {
    Finding first = alike.get(0);
    if (alike.size() == 1) {
      return first;
    }
    List<String> names =
        alike.stream().flatMap(finding -> finding.alike().stream()).map(Alike::one).toList();
    String sentence =
        Prose.inWords(alike.size())
            + " "
            + first.alike().orElseThrow().ofMany()
            + ": "
            + Prose.listed(names);
    return new Finding(
        first.severity(), first.concerns(), "", "", OptionalLong.empty(), sentence, first.remedy());
  }
}
