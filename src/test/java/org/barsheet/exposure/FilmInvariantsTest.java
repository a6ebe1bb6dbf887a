package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.score.TempoMap;
import org.barsheet.timing.RandomPlans;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds of every film, tried on seeded random plans. */
class FilmInvariantsTest {

  @Test
  void hold_on_dozens_of_plans() {
    assertThat(tryPlans(1, 60)).isGreaterThan(20);
  }

  @Test
  @Tag("trial")
  void hold_on_three_thousand_plans() {
    assertThat(tryPlans(50_000, 3_000)).isGreaterThan(1_000);
  }

  /** How many of the plans could be kept. */
  private static int tryPlans(long firstSeed, int count) {
    int kept = 0;
    for (long seed = firstSeed; seed < firstSeed + count; seed++) {
      Optional<TimingSheet> timing = time(new RandomPlans(seed, 12, 8, true));
      if (timing.isPresent()) {
        check(seed, FilmPlanner.complete(timing.get(), List.of()));
        kept++;
      }
    }
    return kept;
  }

  private static Optional<TimingSheet> time(RandomPlans plans) {
    try {
      return Optional.of(plans.next().time());
    } catch (InputException refused) {
      assertThat(refused.problems()).allSatisfy(p -> assertThat(p.sentence()).isNotBlank());
      return Optional.empty();
    }
  }

  private static void check(long seed, FilmSheet film) {
    TimingSheet timing = film.timing();
    checkShots(seed, timing);
    timing.cues().forEach(cue -> checkFrame(seed, timing, cue));
    film.reveals().forEach(reveal -> checkReveal(seed, timing, reveal));
    checkLayers(seed, film);
    assertThat(film.notes())
        .as("seed %d", seed)
        .isSortedAccordingTo((a, b) -> Long.compare(a.frame(), b.frame()))
        .allMatch(note -> note.frame() >= 0 && note.frame() < timing.lengthFrames());
    film.movements().forEach(movement -> checkMovement(seed, movement));
  }

  /** Shots follow one another without a gap from the film's first frame to its last. */
  private static void checkShots(long seed, TimingSheet timing) {
    long at = 0;
    for (Shot shot : timing.shots()) {
      assertThat(shot.frames().start()).as("seed %d, shot %d", seed, shot.index()).isEqualTo(at);
      assertThat(shot.frames().length()).isPositive();
      at = shot.frames().endExclusive();
    }
    assertThat(at).as("seed %d", seed).isEqualTo(timing.lengthFrames());
  }

  /** floor(seconds × rate + ½), worked out on whole numbers. */
  private static void checkFrame(long seed, TimingSheet timing, Cue cue) {
    cue.occurrence()
        .ifPresent(
            occurrence -> {
              BigInteger[] time = secondsAt(timing, occurrence.startTick());
              BigInteger rate = BigInteger.valueOf(timing.clock().rate().numerator());
              BigInteger per = BigInteger.valueOf(timing.clock().rate().denominator());
              BigInteger top = time[0].multiply(rate).multiply(BigInteger.TWO);
              BigInteger bottom = time[1].multiply(per);
              long frame = top.add(bottom).divide(bottom.multiply(BigInteger.TWO)).longValueExact();
              assertThat(cue.frame())
                  .as("seed %d, %s", seed, cue.id())
                  .isEqualTo(timing.clock().musicStartFrame() + frame);
            });
  }

  /** Seconds from tick 0 as numerator and denominator, stretch by stretch. */
  private static BigInteger[] secondsAt(TimingSheet timing, long tick) {
    TempoMap tempo = timing.music().tempo();
    BigInteger top = BigInteger.ZERO;
    BigInteger bottom = BigInteger.ONE;
    List<TempoMap.Stretch> stretches = tempo.stretches();
    for (int i = 0; i < stretches.size(); i++) {
      long from = stretches.get(i).startTick();
      long next = i + 1 < stretches.size() ? stretches.get(i + 1).startTick() : Long.MAX_VALUE;
      long ticks = Math.min(tick, next) - from;
      if (ticks > 0) {
        BigInteger n = stretches.get(i).perQuarter().value().getNumerator();
        BigInteger d = stretches.get(i).perQuarter().value().getDenominator();
        d = d.multiply(BigInteger.valueOf(tempo.ticksPerQuarter()));
        n = n.multiply(BigInteger.valueOf(ticks));
        top = top.multiply(d).add(n.multiply(bottom));
        bottom = bottom.multiply(d);
      }
    }
    return new BigInteger[] {top, bottom};
  }

  private static void checkReveal(long seed, TimingSheet timing, PlannedReveal reveal) {
    FrameSpan shot = timing.shots().get(reveal.shot()).frames();
    List<Exposure> exposures = reveal.exposures();
    long at = shot.start();
    double before = reveal.reveal().way() == Way.OPENS ? 0 : 1;
    for (Exposure exposure : exposures) {
      assertThat(exposure.frames().start()).as("seed %d", seed).isEqualTo(at);
      boolean onward =
          reveal.reveal().way() == Way.OPENS
              ? exposure.progress() >= before
              : exposure.progress() <= before;
      assertThat(onward).as("seed %d: no photograph backwards", seed).isTrue();
      before = exposure.progress();
      at = exposure.frames().endExclusive();
    }
    assertThat(at).as("seed %d", seed).isEqualTo(shot.endExclusive());
    assertThat(before).as("seed %d: it ends open", seed).isEqualTo(1);
    assertThat(reveal.firstGapFrame()).isBetween(shot.start(), shot.endExclusive() - 1);
    checkEvenGrid(seed, reveal);
  }

  /** Inside a movement every photograph is shown for the same number of frames. */
  private static void checkEvenGrid(long seed, PlannedReveal reveal) {
    int frames =
        reveal
            .squeeze()
            .map(PlannedReveal.Squeeze::framesPerPhotograph)
            .orElse(reveal.reveal().framesPerPhotograph());
    for (Exposure exposure : reveal.exposures()) {
      boolean inside =
          exposure.frames().start() >= reveal.firstGapFrame()
              && exposure.frames().start() < reveal.fullyOpenFrame();
      if (inside) {
        assertThat(exposure.frames().length()).as("seed %d", seed).isEqualTo(frames);
      }
    }
  }

  /** No layer shows two photographs on one frame. */
  private static void checkLayers(long seed, FilmSheet film) {
    List<PlannedReveal> seen = new ArrayList<>();
    for (PlannedReveal reveal : film.reveals()) {
      for (PlannedReveal other : seen) {
        if (other.shot() == reveal.shot() && other.layer() == reveal.layer()) {
          assertThat(span(other).overlaps(span(reveal))).as("seed %d", seed).isFalse();
        }
      }
      seen.add(reveal);
    }
  }

  private static FrameSpan span(PlannedReveal reveal) {
    List<Exposure> exposures = reveal.exposures();
    return new FrameSpan(
        exposures.get(0).frames().start(),
        exposures.get(exposures.size() - 1).frames().endExclusive());
  }

  private static void checkMovement(long seed, Movement movement) {
    double before = -1;
    BigDecimal sum = BigDecimal.ZERO;
    for (Movement.MovedPhotograph photograph : movement.photographs()) {
      assertThat(photograph.measures().step().signum()).as("seed %d", seed).isNotNegative();
      sum = sum.add(photograph.measures().step());
      assertThat(photograph.measures().amount()).as("seed %d", seed).isGreaterThan(before);
      before = photograph.measures().amount();
    }
    assertThat(before).as("seed %d", seed).isEqualTo(90);
    assertThat(sum).as("seed %d: the steps add up", seed).isEqualByComparingTo("90");
  }
}
