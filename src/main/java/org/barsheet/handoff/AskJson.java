package org.barsheet.handoff;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidAsk;
import org.barsheet.clock.Seconds;

/** The places a plan asked for, in {@code timing.json}. */
final class AskJson {

  private AskJson() {}

  static void write(JsonWriter json, LaidAsk ask) throws IOException {
    json.beginObject();
    json.name("kind").value(ask.kind().name().toLowerCase(Locale.ROOT));
    json.name("panel").value(ask.panel());
    json.name("of").value(ask.of());
    json.name("words").value(ask.words());
    json.name("firm").value(ask.firm());
    json.name("held").value(ask.held());
    json.name("quarters").value(ask.quarters().map(q -> new Seconds(q).toString()).orElse(null));
    json.name("cue").value(ask.cue());
    json.endObject();
  }

  static LaidAsk read(JsonPlace ask) {
    return new LaidAsk(
        kind(ask.get("kind")),
        ask.get("panel").text(),
        ask.get("of").text(),
        ask.get("words").text(),
        ask.get("firm").yesOrNo(),
        ask.get("held").text(),
        quarters(ask.get("quarters")),
        ask.get("cue").text());
  }

  private static LaidAsk.Kind kind(JsonPlace kind) {
    for (LaidAsk.Kind known : LaidAsk.Kind.values()) {
      if (known.name().toLowerCase(Locale.ROOT).equals(kind.text())) {
        return known;
      }
    }
    throw kind.damage("nothing called '" + kind.text() + "' asks for a place");
  }

  private static Optional<BigFraction> quarters(JsonPlace quarters) {
    if (quarters.value().isJsonNull()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Seconds.parse(quarters.text()).value());
    } catch (IllegalArgumentException unreadable) {
      throw quarters.damage("'" + quarters.text() + "' is not a fraction");
    }
  }
}
