package org.barsheet.handoff;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.exposure.PhotographMeasures;
import org.barsheet.plan.Opening.Support;

/** A movement in {@code timing.json}: what the hand sets for each of its photographs. */
final class MovementJson {

  private MovementJson() {}

  static void write(JsonWriter json, Movement movement) throws IOException {
    json.beginObject();
    json.name("movement").value(movement.name());
    json.name("model").value(movement.model());
    json.name("openings").beginArray();
    for (String opening : movement.openings()) {
      json.value(opening);
    }
    json.endArray();
    json.name("unit").value(movement.measure().unit());
    json.name("slow").value(movement.slow().word());
    json.name("evenIn").value(movement.evenIn().name().toLowerCase(Locale.ROOT));
    json.name("photographs").beginArray();
    for (MovedPhotograph photograph : movement.photographs()) {
      photograph(json, photograph);
    }
    json.endArray();
    json.endObject();
  }

  private static void photograph(JsonWriter json, MovedPhotograph photograph) throws IOException {
    PhotographMeasures measures = photograph.measures();
    json.beginObject();
    json.name("photograph").value(photograph.photograph().name());
    json.name("progress").value(FilmWords.decimal(photograph.progress()));
    json.name("set").value(FilmWords.plain(measures.set()));
    length(json, "edgeStep", measures.edgeStep());
    length(json, "height", measures.height());
    length(json, "pull", measures.pull());
    json.name("uncovered").value(FilmWords.decimal(measures.uncovered()));
    json.name("heldBy").value(measures.heldBy().map(Support::kind).orElse(""));
    json.endObject();
  }

  private static void length(JsonWriter json, String name, Optional<BigDecimal> millimeters)
      throws IOException {
    json.name(name);
    if (millimeters.isPresent()) {
      json.value(FilmWords.plain(millimeters.get()));
    } else {
      json.nullValue();
    }
  }
}
