package org.barsheet.adoption;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.IntoPanel;
import org.barsheet.plan.Plan;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.HeldBar;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;

/**
 * Carries places that count from the start of a panel: they stay as they are while the music
 * between stays as long as it was.
 */
final class IntoCarrier {

  private final Plan plan;
  private final Revision revision;
  private final OldMusic old;
  private final NewMusic now;
  private final BarCarrier bars;

  IntoCarrier(Plan plan, Revision revision, OldMusic old, NewMusic now, BarCarrier bars) {
    this.plan = plan;
    this.revision = revision;
    this.old = old;
    this.now = now;
    this.bars = bars;
  }

  Outcome carry(IntoPanel place) {
    Optional<Long> start = old.startOf(place.panel());
    if (start.isEmpty()) {
      String sentence = "panel " + place.panel() + " isn't in the last sheets";
      return new Outcome.Asked(sentence, List.of());
    }
    BigFraction from = old.quartersAt(start.get());
    BigFraction to = after(from, start.get(), place.offset());
    Fate<BigFraction> there = bars.fateOf(to);
    if (!(there instanceof Kept<BigFraction> kept)) {
      return bars.asked("the music " + place, there, old.notes().placeAt(to));
    }
    return bars.fateOf(from) instanceof Kept<BigFraction> begins && isFixed(place.panel())
        ? carried(place, to.subtract(from), begins.now(), kept)
        : new Outcome.Asked(
            "panel "
                + place.panel()
                + " may begin somewhere else now, so "
                + place
                + " may be different music",
            List.of(bars.placeAt(kept.now()).toString()));
  }

  private Outcome carried(
      IntoPanel place, BigFraction apart, BigFraction begins, Kept<BigFraction> there) {
    if (there.now().subtract(begins).equals(apart)) {
      return new Outcome.Found(place, there.changed());
    }
    BigFraction amount = rounded(now.between(begins, there.now(), place.offset().unit()));
    if (amount.signum() < 0) {
      String sentence = place + " would be before that panel now";
      return new Outcome.Asked(sentence, List.of(bars.placeAt(there.now()).toString()));
    }
    Length offset = Length.of(place.offset().unit(), amount);
    return new Outcome.Found(new IntoPanel(place.panel(), offset), there.changed());
  }

  /** As a plan writes an amount: to two decimals. */
  private static BigFraction rounded(BigFraction amount) {
    BigDecimal two =
        new BigDecimal(amount.getNumerator())
            .divide(new BigDecimal(amount.getDenominator()), 2, RoundingMode.HALF_UP);
    return BigFraction.of(two.unscaledValue(), BigInteger.TEN.pow(two.scale()));
  }

  /** Whether a panel begins at a place of its own rather than wherever it fits. */
  private boolean isFixed(String name) {
    Optional<Panel> panel =
        plan.panels().stream().filter(one -> one.name().equals(name)).findFirst();
    if (panel.isEmpty()) {
      return false;
    }
    Place cue = panel.get().cue();
    if (panel.get().cut() instanceof Panel.AtPlace
        || cue instanceof Place.AtBar
        || cue instanceof Place.AtMark) {
      return true;
    }
    if (cue instanceof IntoPanel into) {
      return isFixed(into.panel());
    }
    return cue instanceof Place.OfMotif motif && !motif.isAny();
  }

  /** The moment so long after a panel began, in quarter notes from tick 0 of the music before. */
  private BigFraction after(BigFraction from, long frame, Length offset) {
    return switch (offset.unit()) {
      case BARS -> position(from, offset.most());
      case BEATS -> beats(from, offset.most());
      case FRAMES -> old.quartersAt(frame + offset.most().longValue());
      case SECONDS -> old.quartersAt(frame + frames(offset));
    };
  }

  private long frames(Length offset) {
    return plan.film().rate().nearestFrame(new Seconds(offset.most()));
  }

  private BigFraction position(BigFraction from, BigFraction bars) {
    List<HeldBar> all = revision.before().bars();
    List<Long> starts = new ArrayList<>(all.stream().map(HeldBar::start).toList());
    starts.add(all.get(all.size() - 1).end());
    return along(starts, from, bars);
  }

  private BigFraction beats(BigFraction from, BigFraction beats) {
    List<HeldBar> all = revision.before().bars();
    List<Long> starts = new ArrayList<>(all.stream().flatMap(bar -> bar.beats().stream()).toList());
    starts.add(all.get(all.size() - 1).end());
    return along(starts, from, beats);
  }

  /** So many steps of a scale after a moment; beyond its end the last step repeats. */
  private static BigFraction along(List<Long> scale, BigFraction quarters, BigFraction steps) {
    BigFraction from = quarters.multiply(ScoreNotes.UNITS);
    int step = 0;
    while (step + 2 < scale.size() && BigFraction.of(scale.get(step + 1)).compareTo(from) <= 0) {
      step++;
    }
    BigFraction length = BigFraction.of(scale.get(step + 1) - scale.get(step));
    BigFraction at = from.subtract(scale.get(step)).divide(length).add(step).add(steps);
    int whole = Math.max(0, Math.min(at.intValue(), scale.size() - 2));
    BigFraction wide = BigFraction.of(scale.get(whole + 1) - scale.get(whole));
    return at.subtract(whole).multiply(wide).add(scale.get(whole)).divide(ScoreNotes.UNITS);
  }
}
