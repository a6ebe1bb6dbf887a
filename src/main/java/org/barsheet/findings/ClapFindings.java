package org.barsheet.findings;

import java.util.List;
import org.barsheet.calls.AgreedClap;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Performer;
import org.barsheet.received.ReceivedClip;
import org.barsheet.received.ReceivedClip.State;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/** Claps that nothing tells a performer to make: they fall on no click, and not on the pop. */
public final class ClapFindings {

  private final TimingSheet timing;
  private final AgreedClap claps;
  private final Findings findings = new Findings();

  public ClapFindings(TimingSheet timing) {
    this.timing = timing;
    this.claps = new AgreedClap(timing, SoundLayout.of(timing));
  }

  /** Of the clips that have not come: in the others the clap is where it is. */
  public List<Finding> all(List<ReceivedClip> clips) {
    for (Performer performer : timing.plan().performers()) {
      boolean came =
          clips.stream()
              .filter(clip -> clip.performer().name().equals(performer.name()))
              .anyMatch(clip -> clip.state() != State.MISSING);
      if (!came) {
        performer.clap().ifPresent(clap -> add(performer, clap));
      }
    }
    return findings.worstFirst();
  }

  private void add(Performer performer, Performer.Clap clap) {
    Seconds musicStart = timing.clock().rate().startOf(timing.clock().musicStartFrame());
    Seconds inFilm = clap.at().plus(musicStart);
    if (claps.with(inFilm).isPresent()) {
      return;
    }
    claps
        .nearest(inFilm)
        .ifPresent(
            click ->
                findings.add(
                    Severity.REMARK,
                    Concerns.PERFORMERS,
                    "",
                    "the clap of " + performer.name() + " is on no click, so it's hard to hit",
                    "have them clap with "
                        + click.name()
                        + ": clap: {at: "
                        + click.fromMusicStart().toDecimal(3).stripTrailingZeros().toPlainString()
                        + " s, …}"));
  }
}
