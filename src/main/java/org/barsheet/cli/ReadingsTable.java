package org.barsheet.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.barsheet.pulse.Reading;
import org.barsheet.pulse.Readings;

/** The ways to hear a score, a row each. */
final class ReadingsTable {

  private static final int DOWNBEATS = 3;

  private ReadingsTable() {}

  static Table of(List<Reading> readings) {
    Table table = new Table("reading", "bpm", "bars", "first downbeats", "options");
    for (Reading reading : readings) {
      table.add(
          name(reading),
          Figures.decimal(Readings.beatsPerMinute(reading.music()), 1),
          reading.music().bars().bars().size(),
          reading.music().firstDownbeats(DOWNBEATS).stream()
              .map(beat -> beat.seconds().toDecimal(3) + " s")
              .collect(Collectors.joining(", ")),
          option(reading));
    }
    return table;
  }

  private static String name(Reading reading) {
    return reading.kind() == Reading.Kind.LATER
        ? "bars " + Figures.count(reading.beatsLater(), "beat") + " later"
        : reading.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String option(Reading reading) {
    return switch (reading.kind()) {
      case FOLLOWED -> "";
      case HALF_AS_FAST, TWICE_AS_FAST ->
          "--bpm " + Figures.number(reading.request().beatsPerMinute().orElseThrow(), 1);
      case LATER ->
          reading.request().pins().stream()
              .map(pin -> "--pin " + pin.bar() + "=" + pin.at().toDecimal(3))
              .collect(Collectors.joining(" "));
      case AS_WRITTEN -> "--tempo written";
      case AS_PLAYED -> "--tempo played";
    };
  }
}
