package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.assertj.core.data.Offset;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.SoundLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OtioTimelineTest {

  private static final JsonSchema SCHEMA = schema();
  private static final Offset<Double> EXACT = Offset.offset(1e-9);

  private static JsonSchema schema() {
    try (InputStream text =
        Objects.requireNonNull(OtioTimelineTest.class.getResourceAsStream("otio.schema.json"))) {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static List<FrameRate> rates() {
    return FrameRate.ALL;
  }

  private static String written(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      OtioTimeline.write(sheet, "quay-guide.wav", bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /** Checks the schema and everything a schema cannot say; gives the tracks. */
  private static List<JsonObject> checked(FilmSheet sheet) {
    String json = written(sheet);
    assertThat(SCHEMA.validate(json, InputFormat.JSON)).isEmpty();
    JsonObject timeline = JsonParser.parseString(json).getAsJsonObject();
    FrameRate rate = sheet.timing().clock().rate();
    double start = time(timeline.getAsJsonObject("global_start_time"), rate);
    assertThat(start).isEqualTo((double) sheet.plan().film().firstFrame().frame());
    List<JsonObject> tracks = new ArrayList<>();
    for (JsonElement track : timeline.getAsJsonObject("tracks").getAsJsonArray("children")) {
      checkTrack(track.getAsJsonObject(), rate, sheet.timing().lengthFrames());
      tracks.add(track.getAsJsonObject());
    }
    return tracks;
  }

  private static void checkTrack(JsonObject track, FrameRate rate, long filmFrames) {
    double sum = 0;
    for (JsonElement child : track.getAsJsonArray("children")) {
      JsonObject range = child.getAsJsonObject().getAsJsonObject("source_range");
      double duration = time(range.getAsJsonObject("duration"), rate);
      assertThat(duration).isPositive();
      sum += duration;
    }
    assertThat(sum).as("children fill " + track.get("name")).isEqualTo((double) filmFrames);
    Set<Double> marked = new HashSet<>();
    for (JsonElement marker : track.getAsJsonArray("markers")) {
      JsonObject range = marker.getAsJsonObject().getAsJsonObject("marked_range");
      double at = time(range.getAsJsonObject("start_time"), rate);
      assertThat(at).isBetween(0.0, filmFrames - 1.0);
      assertThat(marked.add(at)).as("one marker a frame").isTrue();
      assertThat(marker.getAsJsonObject().get("comment").getAsString()).isNotEmpty();
    }
  }

  /** A time at the film's rate. */
  private static double time(JsonObject time, FrameRate rate) {
    double expected = (double) rate.numerator() / rate.denominator();
    assertThat(time.get("rate").getAsDouble()).isCloseTo(expected, EXACT);
    return time.get("value").getAsDouble();
  }

  private static JsonObject named(List<JsonObject> tracks, String name) {
    return tracks.stream()
        .filter(track -> track.get("name").getAsString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static JsonObject child(JsonObject track, int index) {
    return track.getAsJsonArray("children").get(index).getAsJsonObject();
  }

  private static String url(JsonObject clip) {
    return clip.getAsJsonObject("media_references")
        .getAsJsonObject("DEFAULT_MEDIA")
        .get("target_url")
        .getAsString();
  }

  @ParameterizedTest
  @MethodSource("rates")
  void children_fill_every_track_and_ranges_lie_inside_at_every_rate(FrameRate rate) {
    assertThat(checked(SampleFilm.at(rate).sheet()))
        .extracting(track -> track.get("name").getAsString())
        .containsExactly(
            "shots",
            "photographs, layer 1",
            "photographs, layer 2",
            "performers, layer 1",
            "guide");
  }

  @Test
  void the_demo_fills_its_tracks_too() {
    assertThat(checked(DemoFilm.sheet())).hasSizeGreaterThanOrEqualTo(5);
  }

  @Test
  void every_photograph_is_a_clip_of_its_exposure_under_its_permanent_name() {
    JsonObject layer =
        named(checked(SampleFilm.at(FrameRate.FPS_24).sheet()), "photographs, layer 1");
    JsonArray children = layer.getAsJsonArray("children");
    assertThat(child(layer, 0).get("OTIO_SCHEMA").getAsString()).isEqualTo("Gap.1");
    assertThat(child(layer, 1).get("name").getAsString()).isEqualTo("small-lamp 000");
    assertThat(child(layer, 2).get("name").getAsString()).isEqualTo("small-lamp 001");
    assertThat(url(child(layer, 2))).isEqualTo("photographs/small-lamp%20001.png");
    assertThat(children).hasSize(1 + 1 + 10 + 1);
  }

  @Test
  void a_performer_s_clip_starts_on_the_frame_the_clap_says_at_its_own_rate() {
    JsonObject track =
        named(checked(SampleFilm.at(FrameRate.FPS_24).sheet()), "performers, layer 1");
    JsonObject clip = child(track, 1);
    JsonObject start = clip.getAsJsonObject("source_range").getAsJsonObject("start_time");
    assertThat(url(clip)).isEqualTo("clips/cello.mov");
    assertThat(start.get("rate").getAsDouble()).isCloseTo(30000.0 / 1001, EXACT);
    // 9.875 s after the clap on frame 143.
    assertThat(start.get("value").getAsDouble()).isEqualTo(439);
  }

  /** The whole artwork is seen, 80 pixels a square: chandlers-lamp is at 1.5 across, 7.2 down. */
  @Test
  void a_performer_s_clip_says_where_it_is_in_the_photograph() {
    JsonObject rect =
        checked(DemoFilm.sheet()).stream()
            .flatMap(track -> track.getAsJsonArray("children").asList().stream())
            .map(clip -> clip.getAsJsonObject().getAsJsonObject("metadata"))
            .filter(metadata -> metadata.has("barsheet"))
            .map(metadata -> metadata.getAsJsonObject("barsheet"))
            .filter(ours -> ours.has("rectOnFirstFrame"))
            .filter(ours -> ours.get("opening").getAsString().equals("chandlers-lamp"))
            .map(ours -> ours.getAsJsonObject("rectOnFirstFrame"))
            .filter(r -> r.get("width").getAsDouble() == 120)
            .findFirst()
            .orElseThrow();
    assertThat(rect.get("x").getAsDouble()).isEqualTo(120);
    assertThat(rect.get("y").getAsDouble()).isEqualTo(576);
    assertThat(rect.get("height").getAsDouble()).isEqualTo(176);
  }

  /**
   * The fields of docs/tutorials/otio-serialized-schema-only-fields.md (OpenTimelineIO, Apache-2.0,
   * at commit 013fe047) and the children of compositions: every object has all of its fields and no
   * other.
   */
  private static final Map<String, String> FIELDS =
      Map.of(
          "RationalTime.1", "rate value",
          "TimeRange.1", "duration start_time",
          "Marker.2", "color comment marked_range metadata name",
          "MissingReference.1", "available_image_bounds available_range metadata name",
          "ExternalReference.1", "available_image_bounds available_range metadata name target_url",
          "Gap.1", "effects enabled markers metadata name source_range",
          "Clip.2",
              "active_media_reference_key effects enabled markers media_references metadata name"
                  + " source_range",
          "Track.1", "children effects enabled kind markers metadata name source_range",
          "Stack.1", "children effects enabled markers metadata name source_range",
          "Timeline.1", "global_start_time metadata name tracks");

  @Test
  void every_object_has_the_published_fields_of_its_version() {
    Set<String> seen = new TreeSet<>();
    checkFields(JsonParser.parseString(written(DemoFilm.sheet())), seen);
    checkFields(JsonParser.parseString(written(SampleFilm.at(FrameRate.FPS_24).sheet())), seen);
    assertThat(seen).isSubsetOf(FIELDS.keySet()).hasSizeGreaterThanOrEqualTo(9);
  }

  private static void checkFields(JsonElement element, Set<String> seen) {
    if (element.isJsonArray()) {
      element.getAsJsonArray().forEach(each -> checkFields(each, seen));
    } else if (element.isJsonObject()) {
      JsonObject object = element.getAsJsonObject();
      if (object.has("OTIO_SCHEMA")) {
        String schema = object.get("OTIO_SCHEMA").getAsString();
        Set<String> fields = new TreeSet<>(object.keySet());
        fields.remove("OTIO_SCHEMA");
        assertThat(String.join(" ", fields)).as(schema).isEqualTo(FIELDS.get(schema));
        seen.add(schema);
      }
      object.entrySet().forEach(member -> checkFields(member.getValue(), seen));
    }
  }

  /**
   * What is available of a file begins at the file's own timecode (OpenTimelineIO,
   * docs/tutorials/otio-timeline-structure.md): 8 s before one o'clock, as its bext chunk says.
   */
  @Test
  void the_guide_s_ranges_count_from_its_own_timecode() {
    JsonObject clip = child(named(checked(SampleFilm.at(FrameRate.FPS_24).sheet()), "guide"), 0);
    JsonObject available =
        clip.getAsJsonObject("media_references")
            .getAsJsonObject("DEFAULT_MEDIA")
            .getAsJsonObject("available_range");
    JsonObject start = available.getAsJsonObject("start_time");
    assertThat(start.get("rate").getAsDouble()).isEqualTo(48_000);
    assertThat(start.get("value").getAsDouble()).isEqualTo((3600 - 8) * 48_000.0);
    assertThat(available.getAsJsonObject("duration").get("value").getAsDouble())
        .isEqualTo(
            (double)
                SoundLayout.of(SampleFilm.at(FrameRate.FPS_24).sheet().timing()).lengthSamples());
  }

  @Test
  void the_guide_begins_after_its_head() {
    JsonObject clip = child(named(checked(SampleFilm.at(FrameRate.FPS_24).sheet()), "guide"), 0);
    JsonObject start = clip.getAsJsonObject("source_range").getAsJsonObject("start_time");
    assertThat(url(clip)).isEqualTo("quay-guide.wav");
    assertThat(start.get("rate").getAsDouble()).isEqualTo(48_000);
    assertThat(start.get("value").getAsDouble()).isEqualTo(3600 * 48_000.0);
  }

  @Test
  void markers_stand_on_the_track_they_belong_to() {
    List<JsonObject> tracks = checked(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(markers(named(tracks, "guide"))).contains("153 glimmer 1", "243 mark A");
    assertThat(markers(named(tracks, "photographs, layer 2"))).containsExactly("183 lamp-2 lands");
    assertThat(markers(named(tracks, "shots"))).isEmpty();
  }

  private static List<String> markers(JsonObject track) {
    List<String> markers = new ArrayList<>();
    for (JsonElement each : track.getAsJsonArray("markers")) {
      JsonObject marker = each.getAsJsonObject();
      JsonObject start = marker.getAsJsonObject("marked_range").getAsJsonObject("start_time");
      markers.add((long) start.get("value").getAsDouble() + " " + marker.get("name").getAsString());
    }
    return markers;
  }

  @Test
  void cues_on_one_frame_share_a_marker() {
    List<JsonObject> tracks = checked(DemoFilm.sheet());
    assertThat(markers(named(tracks, "guide"))).anyMatch(marker -> marker.contains(" + "));
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_urls_stay_inside_the_timeline_s_folder(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_25).saying(text).sheet();
    URI folder = URI.create("file:///film/");
    for (JsonObject track : checked(sheet)) {
      for (JsonElement each : track.getAsJsonArray("children")) {
        JsonObject child = each.getAsJsonObject();
        boolean file =
            child.has("media_references")
                && child.getAsJsonObject("media_references").toString().contains("target_url");
        if (file) {
          assertThat(folder.resolve(url(child)).normalize().getPath()).startsWith("/film/");
          assertThat(url(child).split("/", -1)).doesNotContain("", ".", "..");
        }
      }
    }
  }

  @Test
  void the_schema_refuses_another_version_of_an_object() {
    String json = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(SCHEMA.validate(json.replace("Marker.2", "Marker.3"), InputFormat.JSON))
        .isNotEmpty();
  }

  /**
   * The music's start is frame 48; its recording began to run 1.51 s before, between two frames.
   */
  @Test
  void the_recording_that_the_plan_names_has_its_own_track(@TempDir Path folder)
      throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("plan.yaml"),
            """
            title: Quay
            score: %s
            film: {frame-rate: 24, music-starts: 2 s}
            music: {recording: 'takes/the mix.wav', recording-starts: -1.51 s}
            panels: [{panel: 1, action: Fog}]
            """
                .formatted(Path.of("scores", "lamplighters-quay.mid").toAbsolutePath()));
    List<JsonObject> tracks = checked(DemoFilm.sheet(plan));
    JsonObject track = tracks.get(tracks.size() - 1);
    assertThat(track.get("name").getAsString()).isEqualTo("recording");
    assertThat(track.get("kind").getAsString()).isEqualTo("Audio");
    // 2 s - 1.51 s = 0.49 s: frame 12 is the first at or after it, 0.01 s or 480 samples on.
    assertThat(child(track, 0).get("OTIO_SCHEMA").getAsString()).isEqualTo("Gap.1");
    JsonObject clip = child(track, 1);
    assertThat(url(clip)).isEqualTo("the%20mix.wav");
    JsonObject start = clip.getAsJsonObject("source_range").getAsJsonObject("start_time");
    assertThat(start.get("rate").getAsDouble()).isEqualTo(48000.0);
    assertThat(start.get("value").getAsDouble()).isEqualTo(480.0);
    JsonObject gap = child(track, 0).getAsJsonObject("source_range").getAsJsonObject("duration");
    assertThat(gap.get("value").getAsDouble()).isEqualTo(12.0);
  }

  @Test
  void a_film_without_a_recording_has_no_track_for_one() {
    assertThat(checked(DemoFilm.sheet()))
        .noneMatch(track -> track.get("name").getAsString().equals("recording"));
  }
}
