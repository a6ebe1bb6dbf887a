package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.barsheet.artwork.FrameRect;
import org.barsheet.artwork.Framing;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.Setup;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Test;

class FramesCsvTest {

  private static final Offset<Double> HALF_PIXEL = Offset.offset(0.5);

  private static List<CSVRecord> rows(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      FramesCsv.write(sheet, bytes);
      String text = bytes.toString(StandardCharsets.UTF_8).substring(1);
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = format.parse(new StringReader(text))) {
        return parser.getRecords();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Test
  void a_row_says_which_photograph_each_layer_shows() {
    List<CSVRecord> rows = rows(SampleFilm.at(FrameRate.FPS_24).sheet());
    CSVRecord accent = rows.get(183);
    assertThat(accent.get("frame")).isEqualTo("183");
    assertThat(accent.get("timecode")).isEqualTo("01:00:07:15");
    assertThat(accent.get("layer_1")).isEqualTo("small-lamp 010");
    assertThat(accent.get("layer_2")).isEqualTo("small-lamp 010");
    assertThat(rows.get(181).get("layer_1")).isEqualTo("small-lamp 009");
    assertThat(rows.get(181).get("layer_2")).isEqualTo("small-lamp 008");
    assertThat(rows.get(0).get("layer_1")).isEmpty();
  }

  @Test
  void every_frame_of_the_demo_shows_exactly_one_photograph_on_each_layer_of_its_shot() {
    FilmSheet sheet = DemoFilm.sheet();
    List<CSVRecord> rows = rows(sheet);
    assertThat(rows).hasSize((int) sheet.timing().lengthFrames());
    for (int frame = 0; frame < rows.size(); frame++) {
      assertThat(rows.get(frame).get("frame")).isEqualTo(Integer.toString(frame));
      Shot shot = shotAt(sheet, frame);
      for (int layer = 1; layer <= FramesCsv.layers(sheet); layer++) {
        List<String> shown = shown(sheet, shot, layer, frame);
        boolean empty = revealsOn(sheet, shot, layer) == 0;
        assertThat(shown).hasSize(empty ? 0 : 1);
        assertThat(rows.get(frame).get("layer_" + layer)).isEqualTo(empty ? "" : shown.get(0));
      }
    }
  }

  /** The photographs of the artwork at rest have the names they have on the shooting sheet. */
  @Test
  void a_plate_says_which_photograph_of_the_whole_artwork_it_is_cut_from() {
    FilmSheet sheet = DemoFilm.sheet();
    CSVRecord first = rows(sheet).get(0);
    assertThat(first.get("plate")).isEqualTo(sheet.shooting().atRest().get(0).name());
  }

  /**
   * Cut out as the row says and enlarged to the frame, an opening lies where the framing of its
   * shot puts it: on the photograph it lies where the setup's view shows it.
   */
  @Test
  void the_part_of_each_photograph_puts_its_opening_where_the_camera_of_the_film_sees_it() {
    FilmSheet sheet = DemoFilm.sheet();
    List<CSVRecord> rows = rows(sheet);
    int checked = 0;
    for (PlannedReveal reveal : sheet.reveals()) {
      Shot shot = sheet.timing().shots().get(reveal.shot());
      Optional<Framing> framing = Framing.of(sheet.timing(), shot);
      for (Exposure exposure : framing.isEmpty() ? List.<Exposure>of() : reveal.exposures()) {
        long frame = exposure.frames().start();
        CSVRecord row = rows.get((int) frame);
        Rect onPhotograph = onPhotograph(sheet, reveal);
        double width = number(row, reveal, "width");
        double left = (onPhotograph.left() - number(row, reveal, "left")) / width;
        double top =
            (onPhotograph.top() - number(row, reveal, "top")) / number(row, reveal, "height");
        FrameRect seen = framing.orElseThrow().inFrame(reveal.opening().rect(), frame);
        assertThat(left * sheet.plan().film().width()).isCloseTo(seen.left(), HALF_PIXEL);
        assertThat(top * sheet.plan().film().height()).isCloseTo(seen.top(), HALF_PIXEL);
        assertThat(width).isBetween(0.01, 1.000001);
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(400);
  }

  /** Where a reveal's opening lies on its photographs, in shares of them, by the setup's view. */
  private static Rect onPhotograph(FilmSheet sheet, PlannedReveal reveal) {
    Setup setup =
        sheet.shooting().setups().stream()
            .filter(one -> one.runs().stream().anyMatch(run -> shows(run, reveal)))
            .findFirst()
            .orElseThrow();
    Rect view = setup.view().orElseThrow().field();
    Rect first =
        sheet.reveals().stream()
            .filter(one -> one.movement().equals(reveal.movement()))
            .findFirst()
            .orElseThrow()
            .opening()
            .rect();
    return new Rect(
        (first.left() - view.left()) / view.width(),
        (first.top() - view.top()) / view.height(),
        first.width() / view.width(),
        first.height() / view.height());
  }

  private static boolean shows(Setup.Run run, PlannedReveal reveal) {
    return run.movement().name().equals(reveal.movement());
  }

  private static double number(CSVRecord row, PlannedReveal reveal, String edge) {
    return Double.parseDouble(row.get("layer_" + reveal.layer() + "_" + edge));
  }

  @Test
  void every_part_lies_on_its_photograph() {
    for (CSVRecord row : rows(DemoFilm.sheet())) {
      for (String photograph : List.of("plate", "layer_1", "layer_2")) {
        if (!row.get(photograph + "_width").isEmpty()) {
          assertLies(row, photograph + "_left", photograph + "_width");
          assertLies(row, photograph + "_top", photograph + "_height");
        }
      }
    }
  }

  private static void assertLies(CSVRecord row, String from, String length) {
    double start = Double.parseDouble(row.get(from));
    assertThat(start).as("%s on frame %s", from, row.get("frame")).isGreaterThan(-1e-5);
    assertThat(start + Double.parseDouble(row.get(length)))
        .as("%s on frame %s", length, row.get("frame"))
        .isLessThan(1 + 1e-5);
  }

  @Test
  void every_plate_of_the_demo_is_cut_from_a_photograph_that_is_taken() {
    FilmSheet sheet = DemoFilm.sheet();
    Set<String> taken = new HashSet<>();
    sheet.shooting().atRest().forEach(plate -> taken.add(plate.name()));
    sheet.movements().stream()
        .flatMap(movement -> movement.photographs().stream())
        .forEach(moved -> taken.add(moved.photograph().name()));
    assertThat(rows(sheet)).allMatch(row -> taken.contains(row.get("plate")));
    CSVRecord thirteenth = rows(sheet).get(2133);
    assertThat(thirteenth.get("plate")).isEqualTo("office-shutter 000");
  }

  /** In panel 4 a clip lies behind the baker's lamp; in panel 10 two shutters move. */
  @Test
  void a_row_names_its_layers_from_back_to_front() {
    List<CSVRecord> rows = rows(DemoFilm.sheet());
    assertThat(rows.get(0).get("back_to_front")).isEqualTo("plate");
    assertThat(rows.get(760).get("back_to_front"))
        .isEqualTo("plate < celesta in bakers-lamp < layer_1");
    Set<String> tenth = new HashSet<>();
    rows.stream()
        .filter(row -> row.get("panel").equals("10"))
        .forEach(row -> tenth.add(row.get("back_to_front")));
    assertThat(tenth).containsExactly("plate < layer_1 < layer_2");
  }

  private static Shot shotAt(FilmSheet sheet, long frame) {
    return sheet.timing().shots().stream()
        .filter(shot -> shot.frames().contains(frame))
        .findFirst()
        .orElseThrow();
  }

  private static long revealsOn(FilmSheet sheet, Shot shot, int layer) {
    return sheet.reveals().stream()
        .filter(reveal -> reveal.shot() == shot.index() && reveal.layer() == layer)
        .count();
  }

  private static List<String> shown(FilmSheet sheet, Shot shot, int layer, long frame) {
    return sheet.reveals().stream()
        .filter(reveal -> reveal.shot() == shot.index() && reveal.layer() == layer)
        .map(PlannedReveal::exposures)
        .flatMap(List::stream)
        .filter(exposure -> exposure.frames().contains(frame))
        .map(Exposure::photograph)
        .map(photograph -> photograph.name())
        .toList();
  }
}
