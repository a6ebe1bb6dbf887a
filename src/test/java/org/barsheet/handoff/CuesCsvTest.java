package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.clock.FrameRate;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CuesCsvTest {

  private static String written(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      CuesCsv.write(sheet, bytes);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return bytes.toString(StandardCharsets.UTF_8).substring(1);
  }

  private static List<CSVRecord> rows(FilmSheet sheet) {
    try (CSVParser parser =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(written(sheet)))) {
      return parser.getRecords();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The bytes EF BB BF (The Unicode Standard, 23.8). */
  @Test
  void a_table_begins_with_a_byte_order_mark_for_programs_that_guess_letters() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    CuesCsv.write(SampleFilm.at(FrameRate.FPS_24).saying("Müller").sheet(), bytes);
    assertThat(bytes.toByteArray()).startsWith(0xEF, 0xBB, 0xBF, 'c', 'u', 'e', ',');
  }

  @Test
  void a_row_says_where_in_music_and_film_a_cue_is_and_who_plays_it() {
    assertThat(written(SampleFilm.at(FrameRate.FPS_24).sheet()))
        .startsWith(
            "cue,kind,bar,beat,timecode,frame,seconds,certainty,form,parts,panel,"
                + "accent_timecode,accent_frame,landings,frame_rate,timecode_counts\r\n")
        .contains(
            "glimmer 1,return,3,1,01:00:06:09,153,4.375000,certain,\"tonal, augmented\","
                + "Celesta; Strings,2,01:00:07:15,183,\"lamp-1 lands on frame 183, 01:00:07:15;"
                + " lamp-2 lands on frame 183, 01:00:07:15\",24,non-drop-frame\r\n")
        .contains(
            "mark A,mark,5,1,01:00:10:03,243,8.125000,,,,,01:00:10:03,243,,"
                + "24,non-drop-frame\r\n");
  }

  /** The demo's music starts 2 s after its first frame: no bar has begun there. */
  @Test
  void a_place_before_the_music_is_in_no_bar() {
    CSVRecord first = rows(DemoFilm.sheet()).get(0);
    assertThat(first.get("cue")).isEqualTo("before the music");
    assertThat(first.get("frame")).isEqualTo("0");
    assertThat(first.get("seconds")).isEqualTo("-2.000000");
    assertThat(first.get("bar") + first.get("beat")).isEmpty();
  }

  /** The third note of glimmer is two beats after its first; a mark has no other moment. */
  @Test
  void a_row_says_on_which_frame_the_photograph_is_to_land() {
    List<CSVRecord> rows = rows(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(rows.get(1).get("frame")).isEqualTo("153");
    assertThat(rows.get(1).get("accent_frame")).isEqualTo("" + (153 + 2 * 15));
    assertThat(rows.get(2).get("accent_frame")).isEqualTo(rows.get(2).get("frame"));
  }

  @Test
  void every_landing_of_the_demo_stands_beside_the_cue_of_its_panel() {
    FilmSheet sheet = DemoFilm.sheet();
    String landings =
        rows(sheet).stream().map(row -> row.get("landings")).collect(Collectors.joining("; "));
    assertThat(sheet.reveals()).isNotEmpty();
    for (PlannedReveal reveal : sheet.reveals()) {
      assertThat(landings)
          .contains(reveal.opening().name() + " lands on frame " + reveal.landsFrame() + ",");
    }
    assertThat(landings).contains("lands on frame 3531, 01:02:27:03, half open;");
  }

  @Test
  void drop_frame_is_said_and_its_labels_printed() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_29_97_DF).from("00:59:55;00").sheet();
    for (CSVRecord row : rows(sheet)) {
      assertThat(row.get("frame_rate")).isEqualTo("30000/1001");
      assertThat(row.get("timecode_counts")).isEqualTo("drop-frame");
      assertThat(row.get("timecode")).matches("\\d\\d:\\d\\d:\\d\\d;\\d\\d");
    }
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void every_cue_is_one_row_whatever_people_type(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).saying(text).sheet();
    List<CSVRecord> rows = rows(sheet);
    assertThat(rows).hasSameSizeAs(sheet.timing().cues());
    for (int i = 0; i < rows.size(); i++) {
      Cue cue = sheet.timing().cues().get(i);
      assertThat(rows.get(i).isConsistent()).isTrue();
      assertThat(rows.get(i).get("frame")).isEqualTo(Long.toString(cue.frame()));
    }
  }

  /** The signs are those of OWASP, "CSV Injection". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "=1+1|'=1+1",
        "+1|'+1",
        "-1|'-1",
        "@SUM(A1)|'@SUM(A1)",
        "＝1|'＝1",
        " =1|' =1",
        "lamp=1|lamp=1",
        "bar 12|bar 12",
      })
  void what_a_spreadsheet_would_calculate_is_defused(String typed, String cell) {
    assertThat(CsvFile.harmless(typed)).isEqualTo(cell);
  }

  @Test
  void tabs_and_line_breaks_in_front_of_a_formula_do_not_hide_it() {
    assertThat(CsvFile.harmless("\t=1")).isEqualTo("' =1");
    assertThat(CsvFile.harmless("\r=1")).isEqualTo("' =1");
  }
}
