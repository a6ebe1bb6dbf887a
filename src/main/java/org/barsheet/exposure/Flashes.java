package org.barsheet.exposure;

import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.FlashRule.Stretch;
import org.barsheet.exposure.FlashRule.Verdict;
import org.barsheet.timing.MusicRuler;
import org.barsheet.timing.TimingSheet;

/** Where a film may flash faster than WCAG 2.3.1 allows. */
public final class Flashes {

  private Flashes() {}

  /**
   * The stretches a viewer should be warned of before they are played: from a second before the
   * first change to a second after the last. Stretches so small that WCAG allows more are left out.
   */
  public static List<FrameSpan> of(FilmSheet sheet) {
    TimingSheet timing = sheet.timing();
    MusicRuler ruler = new MusicRuler(timing.music(), timing.clock());
    return new FlashFindings(timing, ruler, sheet.reveals())
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
