package org.barsheet.recording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for one row of onsets in another: first for both as a whole ({@link Correlation}), then at
 * the best few places window by window, for the one line of start and drift that most windows agree
 * on ({@link DriftLine}).
 */
final class OnsetMatch {

  private static final int CANDIDATES = 4;

  /** Two candidates are this far apart. */
  private static final int APART = OnsetBands.RATE / 4;

  /** A lead of this part of the best place's strength is sure. */
  private static final double CLEAR_LEAD = 0.45;

  /** A best place that stands this many standard deviations above all others' is sure. */
  private static final double CLEAR_HEIGHT = 7;

  private final float[][] clip;
  private final float[][] other;

  OnsetMatch(OnsetBands clip, OnsetBands other) {
    int bands = Math.min(clip.bands(), other.bands());
    this.clip = Whitened.of(clip, bands);
    this.other = Whitened.of(other, bands);
  }

  /** Four neighboring bands in one. */
  private static float[][] broad(float[][] bands) {
    float[][] broad = new float[(bands.length + 3) / 4][bands[0].length];
    for (int band = 0; band < bands.length; band++) {
      for (int i = 0; i < bands[band].length; i++) {
        broad[band / 4][i] += bands[band][i];
      }
    }
    return broad;
  }

  Placement placement() {
    if (clip.length == 0 || clip[0].length < OnsetBands.RATE || other[0].length < OnsetBands.RATE) {
      return new Placement(0, 0, 0);
    }
    Correlation all = Correlation.of(broad(clip), broad(other));
    List<DriftLine> lines = new ArrayList<>();
    for (int lag : all.peaks(CANDIDATES, APART)) {
      lines.add(DriftLine.near(lag, clip, other));
    }
    lines.sort(Comparator.comparingDouble(DriftLine::strength).reversed());
    DriftLine best = lines.get(0);
    double lead = lines.size() == 1 ? 1 : 1 - lines.get(1).strength() / best.strength();
    double height = all.height((int) Math.round(best.start()));
    double confidence =
        best.strength() <= 0
            ? 0
            : Math.min(1, Math.max(0, lead) / CLEAR_LEAD)
                * Math.min(1, Math.max(0, height) / CLEAR_HEIGHT);
    return new Placement(best.start() / OnsetBands.RATE, best.slope() * 1e6, confidence);
  }
}
