package org.barsheet.handoff;

import com.google.gson.FormattingStyle;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.barsheet.ticks.Left;
import org.barsheet.ticks.Mark;
import org.barsheet.ticks.Retake;
import org.barsheet.ticks.Taken;
import org.barsheet.ticks.TakenPhotograph;

/** What has been photographed so far, in {@code timing.json}. */
final class TakenJson {

  private static final int HUNDREDTHS = 100;

  private TakenJson() {}

  static void write(JsonWriter json, Taken taken) throws IOException {
    json.name("taken").beginObject();
    json.name("done").value(taken.done());
    json.name("again").value(taken.again());
    left(json, taken.left());
    json.name("retakes").beginArray();
    for (Retake retake : taken.retakes()) {
      json.beginObject();
      json.name("photographs").value(retake.which());
      json.name("needs").value(retake.words());
      json.endObject();
    }
    json.endArray();
    json.name("photographs").beginArray();
    json.setFormattingStyle(FormattingStyle.COMPACT);
    for (TakenPhotograph photograph : taken.photographs()) {
      photograph(json, photograph);
    }
    json.setFormattingStyle(FormattingStyle.PRETTY.withNewline("\n"));
    json.endArray();
    json.endObject();
  }

  private static void left(JsonWriter json, Left left) throws IOException {
    json.name("left").beginObject();
    json.name("photographs").value(left.photographs());
    json.name("setups").value(left.setups());
    json.name("hours");
    if (left.hours().isPresent()) {
      json.value(FilmWords.decimal(rounded(left.hours().getAsDouble())));
    } else {
      json.nullValue();
    }
    json.name("days");
    if (left.days().isPresent()) {
      json.value(left.days().getAsInt());
    } else {
      json.nullValue();
    }
    json.name("ends").value(left.ends().map(Object::toString).orElse(null));
    json.name("paceMeasured").value(left.measured());
    json.endObject();
  }

  private static double rounded(double hours) {
    return (double) Math.round(hours * HUNDREDTHS) / HUNDREDTHS;
  }

  private static void photograph(JsonWriter json, TakenPhotograph photograph) throws IOException {
    json.beginObject();
    json.name("photograph").value(photograph.name());
    json.name("setup").value(photograph.setup());
    json.name("likeness").value(photograph.likeness());
    json.name("mark").value(photograph.mark().map(Mark::word).orElse(""));
    json.name("notes").beginArray();
    for (String note : photograph.notes()) {
      json.value(note);
    }
    json.endArray();
    json.endObject();
  }

  /** What each photograph showed: name to likeness, in the order of work. */
  static Map<String, String> likenesses(JsonPlace taken) {
    Map<String, String> likenesses = new LinkedHashMap<>();
    taken
        .get("photographs")
        .each(one -> likenesses.put(one.get("photograph").text(), one.get("likeness").text()));
    return likenesses;
  }
}
