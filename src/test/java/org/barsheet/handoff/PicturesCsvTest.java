package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.timing.Shot;
import org.junit.jupiter.api.Test;

class PicturesCsvTest {

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
