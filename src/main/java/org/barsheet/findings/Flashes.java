package org.barsheet.findings;

import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.findings.FlashRule.Stretch;
import org.barsheet.findings.FlashRule.Verdict;
import org.barsheet.timing.TimingSheet;

/** Where a film may flash faster than WCAG 2.3.1 allows. */
public final class Flashes {

  private Flashes() {}

  /**
   * The stretches a viewer should be warned of before they are played: from a second before the
   * first change to a second after the last. Stretches so small that WCAG allows more are left out.
   */
  public static List<FrameSpan> of(TimingSheet timing, List<PlannedReveal> reveals) {
    MusicRuler ruler = new MusicRuler(timing.music(), timing.clock());
    return new FlashFindings(timing, ruler, reveals)
        .stretches().stream()
            .filter(stretch -> stretch.verdict() == Verdict.OVER && !stretch.isSmall())
            .map(stretch -> around(stretch, timing.plan().film().rate()))
            .toList();
  }

  private static FrameSpan around(Stretch stretch, FrameRate rate) {
    return new FrameSpan(
        Math.max(0, stretch.firstFrame() - rate.nominal()), stretch.lastFrame() + rate.nominal());
  }
}
