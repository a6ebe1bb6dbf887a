package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A film that runs over a full minute at the rates whose timecode skips labels: every file says the
 * same label for the same frame. The labels are walked one by one: the first two (at 59.94 four) of
 * each minute but the tenth ones do not exist (SMPTE ST 12-1, as OpenTimelineIO's {@code
 * rationalTime.cpp} has it).
 */
class DropFrameTest {

  /** Ten seconds before 09:59, which skips labels, and before 10:00, which does not. */
  private static final List<Integer> MINUTES = List.of(9 * 60 + 58, 9 * 60 + 59);

  private record Start(FrameRate rate, int minute) {

    String label() {
      return label(minute, 50, 0);
    }

    static String label(int minute, int second, int frame) {
      return String.format(
          Locale.ROOT, "%02d:%02d:%02d;%02d", minute / 60, minute % 60, second, frame);
    }
  }

  static List<Start> starts() {
    return List.of(FrameRate.FPS_29_97_DF, FrameRate.FPS_59_94_DF).stream()
        .flatMap(rate -> MINUTES.stream().map(minute -> new Start(rate, minute)))
        .toList();
  }

  private static FilmSheet film(Start start) {
    return SampleFilm.at(start.rate()).from(start.label()).sheet();
  }

  /** The label of every frame of the film, walked without any formula. */
  private static List<String> labels(Start start, long frames) {
    int nominal = start.rate().equals(FrameRate.FPS_29_97_DF) ? 30 : 60;
    List<String> labels = new ArrayList<>();
    int minute = start.minute();
    int second = 50;
    int frame = 0;
    while (labels.size() <= frames) {
      labels.add(Start.label(minute, second, frame));
      frame++;
      if (frame == nominal) {
        frame = 0;
        second++;
      }
      if (second == 60) {
        second = 0;
        minute++;
        frame = minute % 10 == 0 ? 0 : nominal / 15;
      }
    }
    return labels;
  }

  private static String text(HandoffFile file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      file.content().writeTo(out);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  private static Map<String, String> files(FilmSheet sheet) {
    Map<String, String> files = new HashMap<>();
    for (HandoffFile file : Handoff.documents(sheet, "quay")) {
      files.put(file.path(), text(file));
    }
    return files;
  }

  private static String of(Map<String, String> files, String name) {
    return files.getOrDefault(name, "");
  }

  private static List<CSVRecord> rows(String table) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = format.parse(new StringReader(table.substring(1)))) {
      return parser.getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @ParameterizedTest
  @MethodSource("starts")
  void every_table_says_the_walked_label_and_how_it_counts(Start start) {
    FilmSheet sheet = film(start);
    List<String> labels = labels(start, sheet.timing().lengthFrames());
    Map<String, String> files = files(sheet);
    for (String name : List.of("quay-frames.csv", "quay-inserts.csv", "quay-cues.csv")) {
      List<CSVRecord> rows = rows(of(files, name));
      assertThat(rows).as(name).isNotEmpty();
      for (CSVRecord row : rows) {
        int frame = Integer.parseInt(row.get("frame"));
        assertThat(row.get("timecode")).isEqualTo(labels.get(frame));
        assertThat(row.get("timecode_counts")).isEqualTo("drop-frame");
        assertThat(row.get("frame_rate")).isEqualTo(start.rate().exactName());
      }
    }
    boolean skips = start.minute() == MINUTES.get(0);
    assertThat(labels.contains("09:59:00;00") || labels.contains("09:59:00;01")).isFalse();
    assertThat(labels.contains("10:00:00;00")).isNotEqualTo(skips);
  }

  @ParameterizedTest
  @MethodSource("starts")
  void every_cut_of_the_list_and_of_timing_json_has_the_walked_label(Start start) {
    FilmSheet sheet = film(start);
    List<String> labels = labels(start, sheet.timing().lengthFrames());
    Map<String, String> files = files(sheet);
    JsonArray shots =
        JsonParser.parseString(of(files, "timing.json")).getAsJsonObject().getAsJsonArray("shots");
    Matcher events =
        Pattern.compile("(?m)^\\d{3} .* (\\S{11}) (\\S{11})\\r?$").matcher(of(files, "quay.edl"));
    for (JsonElement element : shots) {
      JsonObject shot = element.getAsJsonObject();
      String in = labels.get(shot.get("startFrame").getAsInt());
      String out = labels.get(shot.get("endFrameExclusive").getAsInt());
      assertThat(shot.get("timecodeIn").getAsString()).isEqualTo(in);
      assertThat(shot.get("timecodeOut").getAsString()).isEqualTo(out);
      assertThat(events.find()).isTrue();
      assertThat(events.group(1).replace(';', ':')).isEqualTo(in.replace(';', ':'));
      assertThat(events.group(2).replace(';', ':')).isEqualTo(out.replace(';', ':'));
    }
    assertThat(of(files, "quay.edl")).contains("FCM: DROP FRAME");
  }

  /** The timeline counts frames: labels since midnight less those that do not exist. */
  @ParameterizedTest
  @MethodSource("starts")
  void the_timeline_begins_on_the_frame_of_its_label(Start begin) {
    JsonObject start =
        JsonParser.parseString(of(files(film(begin)), "quay.otio"))
            .getAsJsonObject()
            .getAsJsonObject("global_start_time");
    FrameRate rate = begin.rate();
    int nominal = rate.nominal();
    long seconds = begin.minute() * 60L + 50;
    // Every minute since midnight but the tenth ones skipped labels.
    long skipped = (long) nominal / 15 * (begin.minute() - begin.minute() / 10);
    assertThat(start.get("value").getAsLong()).isEqualTo(seconds * nominal - skipped);
    assertThat(start.get("rate").getAsDouble())
        .isEqualTo((double) rate.numerator() / rate.denominator());
  }
}
