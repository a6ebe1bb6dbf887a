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
import org.barsheet.artwork.Framing;
import org.barsheet.artwork.PictureRect;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.SetUp;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Test;

class PicturesCsvTest {

  private static final Offset<Double> HALF_PIXEL = Offset.offset(0.5);

  private static List<CSVRecord> rows(FilmSheet sheet) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      PicturesCsv.write(sheet, bytes);
      String text = bytes.toString(StandardCharsets.UTF_8);
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = format.parse(new StringReader(text))) {
        return parser.getRecords();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Test
  void a_row_says_which_picture_each_layer_shows() {
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
  void every_frame_of_the_demo_shows_exactly_one_picture_on_each_layer_of_its_shot() {
    FilmSheet sheet = DemoFilm.sheet();
    List<CSVRecord> rows = rows(sheet);
    assertThat(rows).hasSize((int) sheet.timing().lengthFrames());
    for (int frame = 0; frame < rows.size(); frame++) {
      assertThat(rows.get(frame).get("frame")).isEqualTo(Integer.toString(frame));
      Shot shot = shotAt(sheet, frame);
      for (int layer = 1; layer <= PicturesCsv.layers(sheet); layer++) {
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
    assertThat(first.get("plate")).isEqualTo("panel 1 plate");
    assertThat(first.get("plate_cut_from")).isEqualTo(sheet.shooting().atRest().get(0).name());
  }

  /**
   * Cut out as the row says and enlarged to the film's picture, an opening lies where the framing
   * of its shot puts it: on the photograph it lies where the set-up's view shows it.
   */
  @Test
  void the_part_of_each_picture_puts_its_opening_where_the_camera_of_the_film_sees_it() {
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
        double wide = number(row, reveal, "wide");
        double left = (onPhotograph.left() - number(row, reveal, "left")) / wide;
        double top =
            (onPhotograph.top() - number(row, reveal, "top")) / number(row, reveal, "high");
        PictureRect seen = framing.orElseThrow().inPicture(reveal.opening().rect(), frame);
        assertThat(left * sheet.plan().film().width()).isCloseTo(seen.left(), HALF_PIXEL);
        assertThat(top * sheet.plan().film().height()).isCloseTo(seen.top(), HALF_PIXEL);
        assertThat(wide).isBetween(0.01, 1.000001);
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(400);
  }

  /** Where a reveal's opening lies on its photographs, in shares of them, by the set-up's view. */
  private static Rect onPhotograph(FilmSheet sheet, PlannedReveal reveal) {
    SetUp setUp =
        sheet.shooting().setUps().stream()
            .filter(one -> one.runs().stream().anyMatch(run -> shows(run, reveal)))
            .findFirst()
            .orElseThrow();
    Rect view = setUp.view().orElseThrow().field();
    Rect first =
        sheet.reveals().stream()
            .filter(one -> one.movement().equals(reveal.movement()))
            .findFirst()
            .orElseThrow()
            .opening()
            .rect();
    return new Rect(
        (first.left() - view.left()) / view.wide(),
        (first.top() - view.top()) / view.high(),
        first.wide() / view.wide(),
        first.high() / view.high());
  }

  private static boolean shows(SetUp.Run run, PlannedReveal reveal) {
    return run.movement().name().equals(reveal.movement());
  }

  private static double number(CSVRecord row, PlannedReveal reveal, String edge) {
    return Double.parseDouble(row.get("layer_" + reveal.layer() + "_" + edge));
  }

  @Test
  void every_part_lies_on_its_photograph() {
    for (CSVRecord row : rows(DemoFilm.sheet())) {
      for (String picture : List.of("plate", "layer_1", "layer_2")) {
        if (!row.get(picture + "_wide").isEmpty()) {
          assertLies(row, picture + "_left", picture + "_wide");
          assertLies(row, picture + "_top", picture + "_high");
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
        .flatMap(movement -> movement.pictures().stream())
        .forEach(moved -> taken.add(moved.picture().name()));
    assertThat(rows(sheet)).allMatch(row -> taken.contains(row.get("plate_cut_from")));
    CSVRecord thirteenth = rows(sheet).get(2133);
    assertThat(thirteenth.get("plate_cut_from")).isEqualTo("office-shutter 000");
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
        .map(Exposure::picture)
        .map(picture -> picture.name())
        .toList();
  }
}
