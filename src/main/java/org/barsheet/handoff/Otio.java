package org.barsheet.handoff;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.barsheet.clock.FrameRate;

/**
 * The objects of OpenTimelineIO's JSON (docs {@code otio-file-format-specification.md} and {@code
 * otio-serialized-schema-only-fields.md}), in the versions that releases 0.15 to 0.18 write, which
 * later ones read too.
 */
final class Otio {

  private static final String MEDIA_KEY = "DEFAULT_MEDIA";

  private Otio() {}

  static JsonObject time(double rate, long value) {
    JsonObject time = object("RationalTime.1");
    time.addProperty("rate", rate);
    time.addProperty("value", (double) value);
    return time;
  }

  static JsonObject time(FrameRate rate, long value) {
    return time(rate(rate), value);
  }

  static double rate(FrameRate rate) {
    return (double) rate.numerator() / rate.denominator();
  }

  static JsonObject range(JsonObject start, JsonObject duration) {
    JsonObject range = object("TimeRange.1");
    range.add("start_time", start);
    range.add("duration", duration);
    return range;
  }

  static JsonObject gap(FrameRate rate, long frames) {
    return item("Gap.1", "", range(time(rate, 0), time(rate, frames)));
  }

  static JsonObject clip(String name, JsonObject sourceRange, JsonObject media) {
    JsonObject clip = item("Clip.2", name, sourceRange);
    JsonObject references = new JsonObject();
    references.add(MEDIA_KEY, media);
    clip.add("media_references", references);
    clip.addProperty("active_media_reference_key", MEDIA_KEY);
    return clip;
  }

  /** Media that does not exist yet. */
  static JsonObject missing(String name) {
    return media("MissingReference.1", name);
  }

  /** A file, relative to the timeline's own folder, with '/' between folders. */
  static JsonObject file(String path) {
    return file(path, JsonNull.INSTANCE);
  }

  /**
   * The same of a file whose length and timecode are known.
   *
   * @param available from its own timecode on; ranges of clips count from there too
   */
  static JsonObject file(String path, JsonElement available) {
    JsonObject media = media("ExternalReference.1", "");
    media.add("available_range", available);
    media.addProperty("target_url", encoded(path));
    return media;
  }

  static JsonObject track(String name, String kind, JsonArray children, JsonArray markers) {
    JsonObject track = item("Track.1", name, JsonNull.INSTANCE);
    track.add("markers", markers);
    track.addProperty("kind", kind);
    track.add("children", children);
    return track;
  }

  static JsonObject stack(String name, List<JsonObject> tracks) {
    JsonObject stack = item("Stack.1", name, JsonNull.INSTANCE);
    JsonArray children = new JsonArray();
    tracks.forEach(children::add);
    stack.add("children", children);
    return stack;
  }

  static JsonObject timeline(String name, JsonObject start, JsonObject stack, JsonObject data) {
    JsonObject timeline = object("Timeline.1");
    timeline.add("metadata", data);
    timeline.addProperty("name", name);
    timeline.add("global_start_time", start);
    timeline.add("tracks", stack);
    return timeline;
  }

  static JsonObject marker(String name, String color, JsonObject range, String comment) {
    JsonObject marker = object("Marker.2");
    marker.add("metadata", new JsonObject());
    marker.addProperty("name", name);
    marker.addProperty("color", color);
    marker.add("marked_range", range);
    marker.addProperty("comment", comment);
    return marker;
  }

  private static JsonObject item(String schema, String name, JsonElement sourceRange) {
    JsonObject item = object(schema);
    item.add("metadata", new JsonObject());
    item.addProperty("name", name);
    item.add("source_range", sourceRange);
    item.add("effects", new JsonArray());
    item.add("markers", new JsonArray());
    item.addProperty("enabled", true);
    return item;
  }

  private static JsonObject media(String schema, String name) {
    JsonObject media = object(schema);
    media.add("metadata", new JsonObject());
    media.addProperty("name", name);
    media.add("available_range", JsonNull.INSTANCE);
    media.add("available_image_bounds", JsonNull.INSTANCE);
    return media;
  }

  private static JsonObject object(String schema) {
    JsonObject object = new JsonObject();
    object.addProperty("OTIO_SCHEMA", schema);
    return object;
  }

  /** Everything but RFC 3986's unreserved characters and '/' as percent and two digits. */
  private static String encoded(String path) {
    StringBuilder url = new StringBuilder();
    for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean plain = c < 0x80 && (Character.isLetterOrDigit(c) || "-._~/".indexOf(c) >= 0);
      url.append(
          plain
              ? Character.toString(c)
              : "%" + Integer.toHexString(0x100 | c).substring(1).toUpperCase(Locale.ROOT));
    }
    return url.toString();
  }
}
