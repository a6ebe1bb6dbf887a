package org.barsheet.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.barsheet.exposure.Appearance;
import org.barsheet.received.ClipCheck;
import org.barsheet.received.ClipFault;
import org.barsheet.received.PlaceCheck;
import org.barsheet.received.ReceivedClip;
import org.barsheet.received.ReceivedClip.State;
import org.barsheet.received.SoundCheck;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.TimingSheet;

/** What is missing or wrong about the performers' clips. */
public final class ClipFindings {

  private final TimingSheet timing;
  private final List<Appearance> appearances;
  private final List<ReceivedClip> clips;
  private final Findings findings = new Findings();

  public ClipFindings(TimingSheet timing, List<Appearance> appearances, List<ReceivedClip> clips) {
    this.timing = timing;
    this.appearances = appearances;
    this.clips = clips;
  }

  public List<Finding> all() {
    Set<String> spokenOf = new HashSet<>();
    for (ReceivedClip clip : clips) {
      add(clip, spokenOf.add(clip.performer().name()));
    }
    addMissing();
    return findings.worstFirst();
  }

  /** What was recorded apart, beside a video, needs none itself. */
  private void add(ReceivedClip clip, boolean isTheClip) {
    List<Appearance> seen =
        appearances.stream()
            .filter(a -> isTheClip && a.performer().name().equals(clip.performer().name()))
            .toList();
    List<ClipFault> whole = new ArrayList<>(ClipCheck.ofWhole(clip, timing.clock(), seen));
    whole.addAll(PlaceCheck.of(clip, timing));
    whole.addAll(SoundCheck.of(clip, timing));
    for (ClipFault fault : whole) {
      findings.add(fault.severity(), Concerns.EDITOR, "", fault.sentence(), fault.remedy());
    }
    for (Appearance appearance : seen) {
      for (ClipFault fault : ClipCheck.ofAppearance(clip, timing.clock(), appearance)) {
        findings.add(
            fault.severity(),
            Concerns.EDITOR,
            timing.shots().get(appearance.shot()),
            fault.sentence(),
            fault.remedy());
      }
    }
  }

  private void addMissing() {
    List<String> missing =
        clips.stream()
            .filter(clip -> clip.state() == State.MISSING && clip.reason().isEmpty())
            .map(clip -> clip.performer().name())
            .toList();
    if (!missing.isEmpty()) {
      String sentence =
          (missing.size() == 1 ? "clip" : "clips") + " not here yet: " + String.join(", ", missing);
      findings.add(Severity.REMARK, Concerns.PERFORMERS, "", sentence, "ask for what is missing");
    }
  }
}
