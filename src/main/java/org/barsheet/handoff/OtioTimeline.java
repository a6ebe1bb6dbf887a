package org.barsheet.handoff;

import com.google.gson.FormattingStyle;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import org.barsheet.artwork.FrameRect;
import org.barsheet.artwork.PhotographCrop;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.Insert;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.film.Photographs;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Recording;
import org.barsheet.timing.RecordingSpan;
import org.barsheet.timing.Shot;
import org.barsheet.timing.SoundLayout;

/**
 * The film as an OpenTimelineIO timeline: shots, a track for each layer of photographs, tracks of
 * performers, the guide sound. Files are named relative to the timeline: {@code photographs/},
 * {@code clips/}, and the guide beside it. What is ours stands under the metadata key {@code
 * barsheet}.
 */
final class OtioTimeline {

  private static final String OURS = "barsheet";
  private static final Gson GSON =
      new GsonBuilder()
          .disableHtmlEscaping()
          .serializeNulls()
          .setFormattingStyle(FormattingStyle.PRETTY.withNewline("\n"))
          .create();

  private final FilmSheet sheet;
  private final FrameRate rate;
  private final OtioMarkers markers;
  private final Photographs photographs;

  private OtioTimeline(FilmSheet sheet) {
    this.sheet = sheet;
    this.rate = sheet.timing().clock().rate();
    this.markers = new OtioMarkers(sheet);
    this.photographs = new Photographs(sheet);
  }

  /**
   * Writes the timeline.
   *
   * @param guide file name of the guide sound
   */
  static void write(FilmSheet sheet, String guide, OutputStream out) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    GSON.toJson(new OtioTimeline(sheet).timeline(guide), text);
    text.write("\n");
    text.flush();
  }

  private JsonObject timeline(String guide) {
    List<JsonObject> tracks = new ArrayList<>();
    tracks.add(shots());
    for (int layer = 1; layer <= FramesCsv.layers(sheet); layer++) {
      tracks.add(photographs(layer));
    }
    tracks.addAll(performers());
    tracks.addAll(new OtioSound(sheet).tracks());
    tracks.add(guide(guide));
    sheet.plan().music().recording().flatMap(this::recording).ifPresent(tracks::add);
    String title = sheet.plan().title();
    return Otio.timeline(
        title,
        Otio.time(rate, sheet.plan().film().firstFrame().frame()),
        Otio.stack(title, tracks),
        ours(filmData()));
  }

  private JsonObject filmData() {
    JsonObject data = new JsonObject();
    data.addProperty("frameRate", rate.exactName());
    data.addProperty("dropFrame", rate.dropFrame());
    data.addProperty("firstFrame", sheet.plan().film().firstFrame().toString());
    JsonObject inputs = new JsonObject();
    for (InputFile input : sheet.inputs()) {
      inputs.addProperty(input.role(), input.sha256());
    }
    data.add("sha256", inputs);
    return data;
  }

  private static JsonObject ours(JsonObject data) {
    JsonObject metadata = new JsonObject();
    metadata.add(OURS, data);
    return metadata;
  }

  /** Items of one track, with true gaps between them. */
  private final class Row {
    private final JsonArray children = new JsonArray();
    private long end;

    private void add(FrameSpan frames, JsonObject clip) {
      gapTo(frames.start());
      children.add(clip);
      end = frames.endExclusive();
    }

    private void gapTo(long frame) {
      if (frame > end) {
        children.add(Otio.gap(rate, frame - end));
        end = frame;
      }
    }

    private JsonArray untilTheEndOfTheFilm() {
      gapTo(sheet.timing().lengthFrames());
      return children;
    }
  }

  private JsonObject frames(long start, long length) {
    return Otio.range(Otio.time(rate, start), Otio.time(rate, length));
  }

  private JsonObject shots() {
    Row row = new Row();
    for (Shot shot : sheet.timing().shots()) {
      String name = "panel " + shot.panel().name();
      JsonObject clip =
          Otio.clip(
              name,
              frames(0, shot.frames().length()),
              Otio.file(PhotographPaths.of(photographs.ofPlate(shot))));
      JsonObject data = new JsonObject();
      data.addProperty("panel", shot.panel().name());
      data.addProperty("action", shot.panel().action());
      data.addProperty("cue", shot.cue().id());
      data.addProperty("reason", shot.reason());
      data.addProperty("plate", photographs.ofPlate(shot));
      addParts(data, shot.frames(), frame -> photographs.plateCrop(shot, frame));
      clip.add("metadata", ours(data));
      row.add(shot.frames(), clip);
    }
    return Otio.track("shots", "Video", row.untilTheEndOfTheFilm(), markers.findings());
  }

  private JsonObject photographs(int layer) {
    Row row = new Row();
    for (PlannedReveal reveal : sheet.reveals()) {
      if (reveal.layer() == layer) {
        reveal
            .exposures()
            .forEach(exposure -> row.add(exposure.frames(), photograph(reveal, exposure)));
      }
    }
    return Otio.track(
        "photographs, layer " + layer, "Video", row.untilTheEndOfTheFilm(), markers.accents(layer));
  }

  private JsonObject photograph(PlannedReveal reveal, Exposure exposure) {
    JsonObject clip =
        Otio.clip(
            exposure.photograph().name(),
            frames(0, exposure.frames().length()),
            Otio.file(PhotographPaths.of(exposure.photograph().name())));
    JsonObject data = new JsonObject();
    data.addProperty("photograph", exposure.photograph().number());
    data.addProperty("progress", FilmWords.decimal(exposure.progress()));
    addParts(data, exposure.frames(), frame -> photographs.crop(reveal, frame));
    clip.add("metadata", ours(data));
    return clip;
  }

  /** Which part of a photograph fills the frame; two where the camera moves. */
  private static void addParts(
      JsonObject data, FrameSpan frames, LongFunction<Optional<PhotographCrop>> part) {
    Optional<PhotographCrop> first = part.apply(frames.start());
    Optional<PhotographCrop> last = part.apply(frames.endExclusive() - 1);
    first.ifPresent(crop -> data.add("partOnFirstFrame", part(crop)));
    if (!last.equals(first)) {
      last.ifPresent(crop -> data.add("partOnLastFrame", part(crop)));
    }
  }

  /** In shares of the photograph, from its left and top edge. */
  private static JsonObject part(PhotographCrop crop) {
    JsonObject part = new JsonObject();
    part.addProperty("x", FilmWords.decimal(crop.left()));
    part.addProperty("y", FilmWords.decimal(crop.top()));
    part.addProperty("width", FilmWords.decimal(crop.width()));
    part.addProperty("height", FilmWords.decimal(crop.height()));
    return part;
  }

  /** Appearances on as few tracks as keep any two from overlapping. */
  private List<JsonObject> performers() {
    List<Row> rows = new ArrayList<>();
    sheet.appearances().stream()
        .sorted(Comparator.comparingLong(appearance -> appearance.frames().start()))
        .forEach(
            appearance -> freeRow(rows, appearance).add(appearance.frames(), seen(appearance)));
    List<JsonObject> tracks = new ArrayList<>();
    for (Row row : rows) {
      String name = "performers, layer " + (tracks.size() + 1);
      tracks.add(Otio.track(name, "Video", row.untilTheEndOfTheFilm(), new JsonArray()));
    }
    return tracks;
  }

  private Row freeRow(List<Row> rows, Appearance appearance) {
    for (Row row : rows) {
      if (row.end <= appearance.frames().start()) {
        return row;
      }
    }
    Row added = new Row();
    rows.add(added);
    return added;
  }

  private JsonObject seen(Appearance appearance) {
    Performer performer = appearance.performer();
    OptionalLong first =
        appearance.clipFrameAt(sheet.timing().clock(), appearance.frames().start());
    Optional<OtioMedia> media = OtioMedia.video(sheet, performer);
    long offset = media.map(OtioMedia::firstFrame).orElse(0L);
    JsonObject start =
        first.isPresent()
            ? Otio.time(performer.clipRate().orElse(rate), offset + first.getAsLong())
            : Otio.time(rate, 0);
    JsonObject clip =
        Otio.clip(
            performer.name(),
            Otio.range(start, Otio.time(rate, appearance.frames().length())),
            media.map(OtioMedia::reference).orElseGet(() -> Otio.missing(performer.name())));
    if (first.isEmpty() && !performer.clip().isEmpty()) {
      clip.add("markers", markers.placeUnknown(performer.name(), start));
    }
    JsonObject data = new JsonObject();
    data.addProperty("opening", appearance.opening().name());
    data.addProperty("clipStartKnown", first.isPresent());
    Insert.of(sheet.timing(), appearance).stream()
        .findFirst()
        .ifPresent(insert -> data.add("rectOnFirstFrame", rect(insert.rect())));
    clip.add("metadata", ours(data));
    return clip;
  }

  /** In pixels of the frame. */
  private static JsonObject rect(FrameRect pixels) {
    JsonObject rect = new JsonObject();
    rect.addProperty("x", FilmWords.pixels(pixels.left()));
    rect.addProperty("y", FilmWords.pixels(pixels.top()));
    rect.addProperty("width", FilmWords.pixels(pixels.width()));
    rect.addProperty("height", FilmWords.pixels(pixels.height()));
    return rect;
  }

  /** The file says its own timecode, so its ranges count from that. */
  private JsonObject guide(String file) {
    SoundLayout layout = SoundLayout.of(sheet.timing());
    long first = layout.samplesSinceMidnight(sheet.plan().film());
    JsonObject available = Otio.range(samples(first), samples(layout.lengthSamples()));
    JsonObject range =
        Otio.range(
            samples(first + layout.headSamples()), Otio.time(rate, sheet.timing().lengthFrames()));
    JsonArray children = new JsonArray();
    children.add(Otio.clip("guide", range, Otio.file(file, available)));
    return Otio.track("guide", "Audio", children, markers.cues());
  }

  private static JsonObject samples(long count) {
    return Otio.time(SoundLayout.SAMPLE_RATE, count);
  }

  /**
   * The production's recording by its file's name, to be sought beside the timeline; nothing where
   * it begins after the film.
   */
  private Optional<JsonObject> recording(Recording recording) {
    RecordingSpan span = RecordingSpan.of(recording, sheet.timing().clock());
    long frames = sheet.timing().lengthFrames() - span.firstFrame();
    if (frames <= 0) {
      return Optional.empty();
    }
    JsonArray children = new JsonArray();
    if (span.firstFrame() > 0) {
      children.add(Otio.gap(rate, span.firstFrame()));
    }
    JsonObject range = Otio.range(samples(span.firstSample()), Otio.time(rate, frames));
    String file = String.valueOf(recording.file().getFileName());
    children.add(Otio.clip("recording", range, Otio.file(file)));
    return Optional.of(Otio.track("recording", "Audio", children, new JsonArray()));
  }
}
