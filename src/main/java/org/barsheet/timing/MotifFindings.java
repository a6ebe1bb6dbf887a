package org.barsheet.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.cues.Cues;
import org.barsheet.cues.MotifSearch;
import org.barsheet.input.Prose;
import org.barsheet.motif.Motif;
import org.barsheet.motif.find.NearMiss;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** What is doubtful about the returns of motifs: none found, or certain ones left without panel. */
final class MotifFindings {

  private final Plan plan;
  private final Music music;
  private final Cues cues;
  private final List<Shot> shots;

  private MotifFindings(Plan plan, Music music, Cues cues, List<Shot> shots) {
    this.plan = plan;
    this.music = music;
    this.cues = cues;
    this.shots = shots;
  }

  /** All of them, in the plan's order of motifs. */
  static List<Finding> of(Plan plan, Music music, Cues cues, List<Shot> shots) {
    return new MotifFindings(plan, music, cues, shots).all();
  }

  private List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    List<String> never =
        plan.motifs().stream()
            .map(MotifRequest::name)
            .filter(name -> cues.counted(name).isEmpty())
            .toList();
    if (!never.isEmpty()) {
      MotifSearch search = MotifSearch.of(plan, music);
      search.motifs().stream()
          .filter(motif -> never.contains(motif.name()))
          .forEach(motif -> findings.add(never(search, motif)));
    }
    plan.motifs().forEach(motif -> addUnused(motif.name(), findings));
    return findings;
  }

  private Finding never(MotifSearch search, Motif motif) {
    String remedy = "check its notes, allow more forms, or match: free";
    return search
        .nearest(motif, 0, Long.MAX_VALUE)
        .map(miss -> finding(Severity.WARNING, place(miss), never(miss), remedy))
        .orElseGet(
            () ->
                finding(
                    Severity.WARNING,
                    "",
                    motif.name() + " is never found, and nothing comes close",
                    remedy));
  }

  private String place(NearMiss miss) {
    return music.bars().locate(miss.startTick()).toString();
  }

  private static String never(NearMiss miss) {
    return miss.motif() + " is never found; the nearest places: " + miss.sentence();
  }

  private void addUnused(String motif, List<Finding> findings) {
    Set<String> used = shots.stream().map(shot -> shot.cue().id()).collect(Collectors.toSet());
    List<String> unused =
        cues.counted(motif).stream()
            .filter(Cues::isCertain)
            .filter(cue -> !used.contains(cue.id()))
            .map(cue -> cue.place().toString().replaceFirst("^bar ", ""))
            .toList();
    if (unused.isEmpty()) {
      return;
    }
    String sentence =
        "no panel uses "
            + Prose.count(unused.size(), "certain return")
            + " of "
            + motif
            + (unused.size() == 1 ? " (bar " : " (bars ")
            + Prose.listed(unused)
            + ")";
    findings.add(finding(Severity.REMARK, "", sentence, "add panels, or ignore"));
  }

  private static Finding finding(Severity severity, String place, String sentence, String remedy) {
    return new Finding(
        severity, Concerns.DIRECTOR, "", place, OptionalLong.empty(), sentence, remedy);
  }
}
