package org.barsheet.plan.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Length;
import org.barsheet.plan.LengthGrammar;
import org.barsheet.plan.Measures;
import org.barsheet.plan.TextCursor;
import org.barsheet.plan.WordChoice;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.pulse.PlayedOrder;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Meter;

/** Reads what is asked about tempo and bars. */
final class MusicSection {

  /** Printed bar numbers that make sense: films have fewer. */
  private static final int MOST_BARS = 99_999;

  private static final Pattern METER = Pattern.compile("(\\d{1,3})\\s*/\\s*(\\d{1,3})");

  private static final String SECONDS = "write seconds from the first sample: 61.04 s";

  private final PlanSection section;

  private MusicSection(PlanSection section) {
    this.section = section;
  }

  static TempoRequest read(Optional<PlanSection> section) {
    return section.map(given -> new MusicSection(given).request()).orElse(TempoRequest.DEFAULT);
  }

  private TempoRequest request() {
    return new TempoRequest(
        section.read("tempo", TempoRequest.Mode.AUTO, WordChoice.of(TempoRequest.Mode.values())),
        section.read("first-bar", 1, MusicSection::bar),
        section.read(
            "pickup", TempoRequest.Pickup.AUTO, WordChoice.of(TempoRequest.Pickup.values())),
        section.read("played-order", MusicSection::playedOrder),
        pins(),
        section.read("meter", MusicSection::meter),
        section.read("bpm", MusicSection::beatsPerMinute),
        section.read("felt-beat", Measures::noteValue));
  }

  static int bar(String text) {
    return Measures.whole(text, -MOST_BARS, MOST_BARS);
  }

  private List<TempoRequest.Pin> pins() {
    List<TempoRequest.Pin> pins = new ArrayList<>();
    for (PlanSection one : section.sections("pins", "pin", PlanKeys.PIN)) {
      int bar = one.need("bar", 0, "write the bar's printed number", MusicSection::bar);
      Seconds at = one.need("at", Seconds.ZERO, SECONDS, MusicSection::seconds);
      if (one.isRead("bar") && one.isRead("at")) {
        TempoRequest.Pin pin = new TempoRequest.Pin(bar, at);
        checkAfter(pins, pin, one);
        pins.add(pin);
      }
    }
    return pins;
  }

  private static Seconds seconds(String text) {
    TextCursor cursor = new TextCursor(text);
    Length length = LengthGrammar.readAmount(cursor, SECONDS);
    cursor.expectEnd(SECONDS);
    if (length.unit() != Length.Unit.SECONDS) {
      throw cursor.fault(0, "expected seconds", SECONDS);
    }
    return new Seconds(length.most());
  }

  /** Bars tied to seconds come in order. */
  private static void checkAfter(
      List<TempoRequest.Pin> pins, TempoRequest.Pin next, PlanSection section) {
    TempoRequest.Pin last = pins.isEmpty() ? next : pins.get(pins.size() - 1);
    boolean later = next.bar() > last.bar() && next.at().compareTo(last.at()) > 0;
    if (!pins.isEmpty() && !later) {
      section.problem(
          "bar",
          "bar " + next.bar() + " must come after bar " + last.bar() + " in both bars and seconds",
          "put pins in the order of the music");
    }
  }

  private static Meter meter(String text) {
    Matcher meter = METER.matcher(text.strip());
    if (meter.matches()) {
      int top = Integer.parseInt(meter.group(1));
      int bottom = Integer.parseInt(meter.group(2));
      boolean powerOfTwo = bottom >= 1 && bottom <= 128 && Integer.bitCount(bottom) == 1;
      if (top >= 1 && top <= 255 && powerOfTwo) {
        return new Meter(top, bottom);
      }
    }
    throw new SyntaxException(text, 0, "'" + text + "' is not a meter", "write 4/4 or 6/8");
  }

  private static BigFraction beatsPerMinute(String text) {
    TextCursor cursor = new TextCursor(text);
    String remedy = "write felt bpm, 10 to 999: 96";
    BigFraction beats = cursor.takeNumber("a number", remedy);
    cursor.expectEnd(remedy);
    if (beats.doubleValue() < 10 || beats.doubleValue() > 999) {
      throw cursor.fault(0, text.strip() + " is out of range", remedy);
    }
    return beats;
  }

  private static String playedOrder(String text) {
    return PlayedOrder.parse(text).toString();
  }
}
