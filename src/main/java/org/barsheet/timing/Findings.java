package org.barsheet.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import org.barsheet.cues.Cue;
import org.barsheet.input.Prose;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** Gathers findings and puts them in order. */
public final class Findings {

  /** So many are kept; a film with more has one cause behind most of them. */
  public static final int MOST = 300;

  private static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::severity)
          .reversed()
          .thenComparingLong(finding -> finding.frame().orElse(-1));

  private final List<Finding> found = new ArrayList<>();

  /** Notes one down that is about a panel and can be seen at a frame. */
  public void add(
      Severity severity, Concerns concerns, Shot shot, Cue cue, String sentence, String remedy) {
    found.add(
        new Finding(
            severity,
            concerns,
            shot.panel().name(),
            cue.place().toString(),
            OptionalLong.of(cue.frame()),
            sentence,
            remedy));
  }

  /** Notes one down that is about a panel as a whole. */
  public void add(Severity severity, Concerns concerns, Shot shot, String sentence, String remedy) {
    found.add(
        new Finding(
            severity,
            concerns,
            shot.panel().name(),
            shot.startsAt().toString(),
            OptionalLong.of(shot.frames().start()),
            sentence,
            remedy));
  }

  /** Notes one down that is about no panel. */
  public void add(
      Severity severity, Concerns concerns, String place, String sentence, String remedy) {
    found.add(new Finding(severity, concerns, "", place, OptionalLong.empty(), sentence, remedy));
  }

  /** More findings together with those there are, worst first. */
  public static List<Finding> of(List<Finding> more, List<Finding> there) {
    Findings all = new Findings();
    all.addAll(more);
    all.addAll(there);
    return all.worstFirst();
  }

  /** The one noted last is of a kind with others: see {@link Finding#alike(String, String)}. */
  public void alike(String ofMany, String one) {
    found.add(found.remove(found.size() - 1).alike(ofMany, one));
  }

  public void add(Finding finding) {
    found.add(finding);
  }

  public void addAll(List<Finding> findings) {
    found.addAll(findings);
  }

  /** All of them, worst first, then in order of frame; past {@link #MOST} only counted. */
  public List<Finding> worstFirst() {
    List<Finding> sorted = found.stream().sorted(WORST_FIRST).toList();
    if (sorted.size() <= MOST) {
      return sorted;
    }
    List<Finding> kept = new ArrayList<>(sorted.subList(0, MOST - 1));
    int left = sorted.size() - kept.size();
    kept.add(
        new Finding(
            sorted.get(MOST - 1).severity(),
            Concerns.DIRECTOR,
            "",
            "",
            OptionalLong.empty(),
            Prose.count(left, "more finding") + " of this severity or lower",
            "fix the ones above first"));
    return List.copyOf(kept);
  }
}
