package org.barsheet.production;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.barsheet.clock.Seconds;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.production.publish.LastSheets;
import org.barsheet.received.HeardPlace;
import org.barsheet.timing.SoundLayout;

/**
 * Where clips were heard, kept with the sheets: nobody has to listen again until the clip, the
 * recording or the score is another one. A file that can't be read is as good as none.
 */
final class KeptPlaces {

  static final String FILE = "clip-places.json";

  private static final Gson JSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  private final Map<String, HeardPlace> earlier;
  private final Map<String, HeardPlace> used = new TreeMap<>();

  private KeptPlaces(Map<String, HeardPlace> earlier) {
    this.earlier = earlier;
  }

  static KeptPlaces in(Path folder) {
    return new KeptPlaces(LastSheets.read(folder, FILE, KeptPlaces::read).orElse(Map.of()));
  }

  private static Map<String, HeardPlace> read(Path file) {
    Map<String, HeardPlace> places = new TreeMap<>();
    try {
      JsonObject all = JsonParser.parseString(Files.readString(file)).getAsJsonObject();
      for (Map.Entry<String, JsonElement> one : all.entrySet()) {
        places.put(one.getKey(), place(one.getValue().getAsJsonObject()));
      }
      return places;
    } catch (IOException
        | JsonParseException
        | IllegalStateException
        | UnsupportedOperationException
        | NumberFormatException
        | NullPointerException damaged) {
      return Map.of();
    }
  }

  private static HeardPlace place(JsonObject json) {
    return new HeardPlace(
        Seconds.of(json.get("startSamples").getAsLong(), SoundLayout.SAMPLE_RATE),
        json.get("driftMillionths").getAsDouble(),
        json.get("confidence").getAsDouble(),
        json.get("withinMilliseconds").getAsDouble(),
        json.get("by").getAsString());
  }

  Optional<HeardPlace> at(String key) {
    return Optional.ofNullable(earlier.get(key));
  }

  void keep(String key, HeardPlace place) {
    used.put(key, place);
  }

  /** The file to keep, where there is anything to keep. */
  Optional<HandoffFile> file() {
    if (used.isEmpty()) {
      return Optional.empty();
    }
    JsonObject all = new JsonObject();
    used.forEach((key, place) -> all.add(key, json(place)));
    byte[] bytes = (JSON.toJson(all) + "\n").getBytes(StandardCharsets.UTF_8);
    return Optional.of(new HandoffFile(FILE, out -> out.write(bytes)));
  }

  private static JsonObject json(HeardPlace place) {
    JsonObject json = new JsonObject();
    json.addProperty("startSamples", SoundLayout.samples(place.start()));
    json.addProperty("driftMillionths", place.drift());
    json.addProperty("confidence", place.confidence());
    json.addProperty("withinMilliseconds", place.within());
    json.addProperty("by", place.by());
    return json;
  }
}
