package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class InsertsCsvTest {

  private static List<CSVRecord> rows(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      InsertsCsv.write(sheet, bytes);
      String text = bytes.toString(StandardCharsets.UTF_8).substring(1);
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = format.parse(new StringReader(text))) {
        return parser.getRecords();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** 143 + 30000/1001 · (5 s + 165/24 s − 2 s) = 438.98, worked by hand; the handles ± 2 s. */
  @Test
  void a_row_says_where_the_opening_is_and_which_frame_of_the_clip_is_seen_in_it() {
    List<CSVRecord> rows = rows(SampleFilm.at(FrameRate.FPS_24).sheet());
    CSVRecord first = rows.get(0);
    assertThat(first.get("frame")).isEqualTo("165");
    assertThat(first.get("timecode")).isEqualTo("01:00:06:21");
    assertThat(first.get("panel")).isEqualTo("2");
    assertThat(first.get("performer")).isEqualTo("cello");
    assertThat(first.get("opening")).isEqualTo("lamp-1");
    assertThat(first.get("back_to_front")).isEqualTo("plate < cello in lamp-1 < layer_1 < layer_2");
    assertThat(first.get("clip_rate")).isEqualTo("30000/1001");
    assertThat(first.get("clip_frame")).isEqualTo("439");
    assertThat(first.get("handle_from_clip_frame")).isEqualTo("379");
    assertThat(first.get("handle_until_clip_frame")).isEqualTo("664");
    assertThat(first.get("frame_rate")).isEqualTo("24");
    assertThat(first.get("timecode_counts")).isEqualTo("non-drop-frame");
  }

  /** On its last frame the field is 6 squares wide from (1, 4.6): 320 pixels a square. */
  @Test
  void the_rectangle_follows_the_moving_camera() {
    List<CSVRecord> rows = rows(SampleFilm.at(FrameRate.FPS_24).sheet());
    CSVRecord last = rows.get(rows.size() - 1);
    assertThat(last.get("frame")).isEqualTo("296");
    assertThat(last.get("x")).isEqualTo("640");
    assertThat(last.get("y")).isEqualTo("768");
    assertThat(last.get("width")).isEqualTo("640");
    assertThat(last.get("height")).isEqualTo("1280");
    assertThat(last.get("share_uncovered")).isEqualTo("1");
    assertThat(last.get("clip_scale")).isEqualTo("0.666667");
  }

  /**
   * Ten frames, slow at the end, to 90 degrees: frame 1 stands at 19 % of them, the hand sets 17.
   */
  @Test
  void the_share_uncovered_follows_the_flap() {
    CSVRecord first = rows(SampleFilm.at(FrameRate.FPS_24).sheet()).get(0);
    assertThat(Double.parseDouble(first.get("share_uncovered")))
        .isCloseTo(1 - Math.cos(Math.toRadians(17)), within(1e-6));
  }

  @Test
  void every_frame_of_every_appearance_of_the_demo_has_a_row() {
    FilmSheet sheet = DemoFilm.sheet();
    long frames = sheet.appearances().stream().mapToLong(a -> a.frames().length()).sum();
    List<CSVRecord> rows = rows(sheet);
    assertThat(rows).hasSize((int) frames);
    assertThat(rows).allMatch(row -> Double.parseDouble(row.get("width")) > 0);
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_stays_in_its_cell(String text) {
    List<CSVRecord> rows = rows(SampleFilm.at(FrameRate.FPS_30).saying(text).sheet());
    assertThat(rows).allMatch(CSVRecord::isConsistent);
    assertThat(rows).allMatch(row -> row.get("timecode_counts").equals("non-drop-frame"));
  }
}
