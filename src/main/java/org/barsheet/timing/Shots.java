package org.barsheet.timing;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.align.Alignment;
import org.barsheet.align.Layout;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cues;
import org.barsheet.plan.Length;
import org.barsheet.plan.Length.Unit;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place.Anywhere;
import org.barsheet.timing.Shot.Landing;

/** Writes a layout of the aligner as shots. */
final class Shots {

  private final AlignerInput input;
  private final Seconds filmEnd;
  private final Alignment alignment;
  private final Layout layout;

  Shots(AlignerInput input, Seconds filmEnd, Alignment alignment) {
    this.input = input;
    this.filmEnd = filmEnd;
    this.alignment = alignment;
    this.layout = alignment.layout();
  }

  /** The shots in story order. */
  List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    for (int p = 0; p < input.panels().size(); p++) {
      shots.add(shot(p));
    }
    return List.copyOf(shots);
  }

  private Shot shot(int p) {
    Panel panel = input.panels().get(p);
    Candidate place = layout.places().get(p);
    FrameSpan frames = layout.spans().get(p);
    BigFraction bars = length(p, Unit.BARS);
    return new Shot(
        p,
        panel,
        Cues.named(place.cue(), panel.name()),
        frames,
        input.ruler().locateFrame(place.cut()),
        decimal(bars, 2),
        asked(panel),
        got(p, panel),
        alignment.reasons().get(p),
        alignment.alternatives().get(p),
        place.rooms().stream().map(room -> landing(room, frames)).toList());
  }

  private static Landing landing(RevealRoom room, FrameSpan frames) {
    PhotographRun way =
        room.fit(frames.start(), frames.endExclusive())
            .orElseThrow(() -> new IllegalStateException("a reveal without room: " + room));
    return new Landing(room, way);
  }

  private BigFraction length(int p, Unit unit) {
    Seconds end = p + 1 < layout.places().size() ? layout.places().get(p + 1).cutAt() : filmEnd;
    BigFraction length = input.ruler().between(layout.places().get(p).cutAt(), end, unit);
    return length.signum() < 0 ? BigFraction.ZERO : length;
  }

  private static String asked(Panel panel) {
    String place = panel.cue() instanceof Anywhere ? "wherever it fits" : panel.cue().toString();
    return panel.length().map(length -> place + ", " + length).orElse(place);
  }

  private String got(int p, Panel panel) {
    Unit unit = panel.length().map(Length::unit).orElse(Unit.BARS);
    BigFraction amount = toFraction(decimal(length(p, unit), 2));
    return Length.of(unit, amount).toString();
  }

  private static BigFraction toFraction(BigDecimal decimal) {
    return BigFraction.of(decimal.unscaledValue())
        .divide(BigInteger.TEN.pow(Math.max(0, decimal.scale())));
  }

  private static BigDecimal decimal(BigFraction number, int places) {
    return new BigDecimal(number.getNumerator())
        .divide(new BigDecimal(number.getDenominator()), places, RoundingMode.HALF_UP);
  }
}
