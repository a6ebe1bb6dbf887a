package org.barsheet.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.motif.Certainty;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Slow;

/** Seeded random plans over random music; some can be kept and some cannot. */
public final class RandomPlans {

  private static final int[] METERS = {2, 3, 4};

  private final Random random;
  private final int mostBars;
  private final int mostPanels;
  private final boolean free;

  /**
   * Plans of a size.
   *
   * @param free whether panels may leave their place to the aligner
   */
  public RandomPlans(long seed, int mostBars, int mostPanels, boolean free) {
    this.random = new Random(seed);
    this.mostBars = mostBars;
    this.mostPanels = mostPanels;
    this.free = free;
  }

  private int below(int limit) {
    return random.nextInt(limit);
  }

  private <T> T one(List<T> of) {
    return of.get(below(of.size()));
  }

  public PlanBuilder next() {
    int bars = 3 + below(mostBars - 2);
    MusicBuilder music = music(bars);
    PlanBuilder plan =
        new PlanBuilder(music)
            .rate(one(List.of(FrameRate.FPS_24, FrameRate.FPS_23_976, FrameRate.FPS_25)))
            .lead(below(4) == 0 ? below(4) : 0)
            .musicStarts(Seconds.of(below(3), 2))
            .opening("lamp-1", "small-lamp")
            .opening("lamp-2", "quay");
    int panels = 1 + below(mostPanels);
    int bar = 1;
    for (int p = 0; p < panels; p++) {
      bar = Math.min(bars, bar + 1 + below(Math.max(1, 2 * bars / panels)));
      addPanel(plan, bar, p);
    }
    return plan;
  }

  private MusicBuilder music(int bars) {
    MusicBuilder music =
        new MusicBuilder().tempo(60 + below(90)).meter(METERS[below(METERS.length)], 4);
    if (below(3) == 0) {
      music.pickup(1);
    }
    music.bars(bars / 2 + 1).tempo(60 + below(90)).bars(bars - bars / 2 - 1);
    for (int bar = 1; bar <= bars; bar += 1 + below(3)) {
      String motif = one(List.of("glimmer", "tide"));
      Certainty certainty = below(3) == 0 ? Certainty.LIKELY : Certainty.CERTAIN;
      double score = certainty == Certainty.LIKELY ? 0.82 : 0.9 + 0.1 * random.nextDouble();
      music.motif(motif, bar, 1 + below(2), certainty, score);
    }
    return below(2) == 0 ? music.mark("A", 1 + below(bars)) : music;
  }

  private void addPanel(PlanBuilder plan, int bar, int p) {
    List<String> cues = new ArrayList<>(List.of("glimmer", "tide", "bar " + bar, "bar " + bar));
    if (free) {
      cues.addAll(List.of("", "", ""));
    }
    if (p > 0) {
      cues.add((1 + below(2)) + " beats into panel " + p);
    }
    String cue = one(cues);
    String length =
        one(List.of("", "", "1 bar", "2 bars", "3 beats", "40 f", "1..3 bars", "20..90 f"));
    boolean reveals = !cue.isEmpty() && below(3) == 0;
    List<Reveal> moving = new ArrayList<>();
    if (reveals) {
      moving.add(reveal("lamp-1"));
      if (below(3) == 0) {
        moving.add(reveal("lamp-2"));
      }
    }
    plan.panel(cue, length, moving);
    if (below(8) == 0) {
      plan.cut(new Panel.Before(org.barsheet.plan.Length.parse("1 beat")));
    }
  }

  private Reveal reveal(String opening) {
    Reveal.Lands lands = one(List.of(Reveal.Lands.values()));
    Slow slow = one(List.of(Slow.values()));
    return Reveals.reveal(opening, 2 + below(24), 1 + below(3), lands, slow);
  }
}
