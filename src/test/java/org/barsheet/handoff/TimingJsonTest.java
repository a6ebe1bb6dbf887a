package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.barsheet.align.places.Kept;
import org.barsheet.changes.LaidFilm;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimingJsonTest {

  @TempDir Path folder = Path.of("set by the test runner");

  private static final JsonSchema SCHEMA = schema();

  private static JsonSchema schema() {
    try (InputStream text =
        Objects.requireNonNull(TimingJson.class.getResourceAsStream("timing.schema.json"))) {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String written(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      TimingJson.write(sheet, bytes);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @MethodSource("rates")
  void follows_its_published_schema_at_every_rate(FrameRate rate) {
    assertThat(SCHEMA.validate(written(SampleFilm.at(rate).sheet()), InputFormat.JSON)).isEmpty();
  }

  static Iterable<FrameRate> rates() {
    return FrameRate.ALL;
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void follows_its_schema_whatever_people_type(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_25).saying(text).sheet();
    assertThat(SCHEMA.validate(written(sheet), InputFormat.JSON)).isEmpty();
    String plain = text.replaceAll("\\p{Cntrl}", " ").replace("\u202E", "");
    assertThat(read(written(sheet)).title()).isEqualTo("The paper harbour" + plain);
  }

  @Test
  void the_schema_refuses_a_field_it_does_not_know_and_a_missing_one() {
    String json = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(SCHEMA.validate(json.replace("\"reason\"", "\"because\""), InputFormat.JSON))
        .hasSizeGreaterThanOrEqualTo(2);
  }

  @Test
  void gives_times_as_exact_fractions_and_as_decimals() {
    String json = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(json.replaceAll("\\s+", ""))
        .contains("\"startSeconds\":{\"exact\":\"5/8\",\"decimal\":0.625},\"startFrame\":63");
  }

  /** Two beats of 5/8 s after its first note, at 24 fps. */
  @Test
  void says_of_a_cue_which_note_a_photograph_lands_on() {
    String json = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(json.replaceAll("\\s+", ""))
        .contains(
            "\"frame\":153,\"accentBar\":3,\"accentBeat\":3,"
                + "\"accentSeconds\":{\"exact\":\"45/8\",\"decimal\":5.625},\"accentFrame\":183,");
  }

  @Test
  void says_the_sections_of_tempo_and_what_became_of_the_pins() throws IOException {
    String score = Path.of("scores/lamplighters-quay.mid").toAbsolutePath().toString();
    Path plan =
        Files.writeString(
            folder.resolve("pinned.yaml"),
            """
            title: Pinned
            score: '%s'
            film: {frame-rate: 24}
            music: {pins: [{bar: 1, at: 1.5 s}, {bar: 33, at: 90 s}]}
            panels:
              - {panel: 1, action: The quay}
            """
                .formatted(score));
    String json = written(DemoFilm.sheet(plan));
    assertThat(SCHEMA.validate(json, InputFormat.JSON)).isEmpty();
    assertThat(json.replaceAll("\\s+", ""))
        .contains(
            "\"sections\":[{\"name\":\"\",\"firstBar\":0,\"lastBar\":0,",
            "{\"name\":\"A\",\"firstBar\":1,\"lastBar\":8,",
            "\"pins\":[{\"bar\":1,\"asked\":{\"exact\":\"3/2\",\"decimal\":1.5},\"frame\":36,",
            "{\"bar\":33,\"asked\":{\"exact\":\"90\",\"decimal\":90},\"frame\":2160,"
                + "\"barLater\":{\"exact\":\"0\",\"decimal\":0},");
  }

  /**
   * Slow at the end, photograph 1 of 10 stands at 90 · (1 − 0.9²) = 17.1 degrees, set to the half.
   */
  @Test
  void says_what_the_hand_sets_for_each_photograph() {
    String json = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(json.replaceAll("\\s+", ""))
        .contains("\"unit\":\"deg\",\"slow\":\"end\",\"evenIn\":\"angle\"")
        .contains("\"photograph\":\"small-lamp001\",\"progress\":0.19,\"set\":17,");
  }

  @Test
  void says_the_rate_exactly() {
    assertThat(written(SampleFilm.at(FrameRate.FPS_29_97_DF).from("01:00:00;00").sheet()))
        .contains("\"frameRate\": \"30000/1001\"", "\"dropFrame\": true", "\"01:00:00;00\"");
  }

  @Test
  void is_the_same_every_time() {
    assertThat(written(SampleFilm.at(FrameRate.FPS_24).sheet()))
        .isEqualTo(written(SampleFilm.at(FrameRate.FPS_24).sheet()));
  }

  @ParameterizedTest
  @MethodSource("rates")
  void a_later_run_reads_back_shots_cues_and_reveals(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    LaidFilm earlier = read(written(sheet));

    assertThat(earlier.rate()).isEqualTo(rate);
    assertThat(earlier.firstFrame()).isEqualTo(sheet.plan().film().firstFrame());
    assertThat(earlier.lengthFrames()).isEqualTo(sheet.timing().lengthFrames());
    assertThat(earlier.inputs().get(1).sha256()).isEqualTo(sheet.inputs().get(1).sha256());
    assertThat(earlier.shots())
        .extracting(LaidFilm.LaidShot::frames)
        .containsExactlyElementsOf(
            sheet.timing().shots().stream().map(shot -> shot.frames()).toList());
    assertThat(earlier.cues())
        .extracting(LaidFilm.LaidCue::at)
        .containsExactlyElementsOf(sheet.timing().cues().stream().map(cue -> cue.at()).toList());
    assertThat(earlier.shots().get(1).reveals().get(1).exposures())
        .extracting(LaidFilm.LaidExposure::photograph)
        .containsExactlyElementsOf(
            sheet.reveals().get(1).exposures().stream()
                .map(exposure -> exposure.photograph().name())
                .toList());
  }

  @ParameterizedTest
  @MethodSource("rates")
  void what_is_read_back_is_what_was_laid_down(FrameRate rate) {
    FilmSheet sheet = SampleFilm.at(rate).sheet();
    assertThat(read(written(sheet))).isEqualTo(sheet.laidDown());
  }

  @Test
  void a_later_run_finds_the_frames_of_locked_panels_and_photographed_reveals() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    LaidFilm earlier = read(written(sheet));
    FrameSpan second = sheet.timing().shots().get(1).frames();
    assertThat(earlier.kept().shots()).containsEntry("2", second).doesNotContainKey("2A");
    assertThat(earlier.kept().reveals())
        .contains(
            new Kept.Run(
                "2",
                sheet.reveals().get(0).opening().name(),
                sheet.reveals().get(0).firstGapFrame(),
                sheet.reveals().get(0).landsFrame()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"startFrame\": 0,   | \"startFrame\": 1.5, | shots[0].startFrame | whole number",
        "\"startFrame\": 0,   | \"startFrame\": 99999999999999999999, | shots[0].startFrame | whole",
        "\"startFrame\": 0,   | \"startFrame\": 1e9, | shots[0].startFrame | whole number",
        "\"startFrame\": 0,   | \"startFrame\": 99999, | shots[0].endFrameExclusive | backwards",
        "\"exact\": \"5/8\"   | \"exact\": \"5/0\" | cues[0].seconds.exact | not a fraction",
        "\"cues\": [          | \"queues\": [ | cues | missing",
        "\"format\": \"bar    | \"format\": \"car | format | not a timing.json",
        "\"version\": 1       | \"version\": 2 | version | another version of barsheet",
        "\"dropFrame\": false | \"dropFrame\": true | film.frameRate | drop-frame",
        "\"01:00:00:00\"      | \"01:00:00:24\" | film.firstFrame | 24 is too many",
        "\"title\": \"The     | \"title\": 7, \"a\": \"The | film.title | text in quotes",
        "\"reveals\": []      | \"reveals\": {} | shots[0].reveals | list",
        "\"reveals\": []      | \"reveals\": [[]] | shots[0].reveals[0] | named values",
      })
  void damage_is_told_with_its_place(String from, String to, String place, String sentence) {
    String json = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    String damaged = replaced(json, from, to);
    assertThatThrownBy(() -> read(damaged))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("timing.json, " + place + ":")
        .hasMessageContaining(sentence)
        .hasMessageContaining("restore an undamaged copy");
  }

  /** Replaced where it first stands; a fraction of seconds among the cues, not the bars. */
  private static String replaced(String json, String from, String to) {
    assertThat(json).contains(from);
    int at = json.indexOf(from, from.startsWith("\"exact\"") ? json.indexOf("\"cues\"") : 0);
    return json.substring(0, at) + to + json.substring(at + from.length());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "hello", "[]", "null", "{\"format\":", "{} {}", "{'format': 1}"})
  void a_file_that_is_no_timing_file_is_refused_in_words(String text) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("timing.json");
  }

  @Test
  void a_file_cut_anywhere_is_refused_in_words() {
    String json = written(SampleFilm.at(FrameRate.FPS_24).sheet());
    for (int length = 0; length < json.length() - 2; length += 97) {
      String cut = json.substring(0, length);
      assertThatThrownBy(() -> read(cut)).isInstanceOf(InputException.class);
    }
  }

  private LaidFilm read(String json) {
    Path file = folder.resolve("timing.json");
    try {
      Files.writeString(file, json);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return TimingJsonReader.read(file);
  }
}
