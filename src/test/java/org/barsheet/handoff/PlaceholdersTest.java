package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.artwork.PhotographCrop;
import org.barsheet.clock.FrameRate;
import org.barsheet.exposure.Movement;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.frames.FilmFrame;
import org.barsheet.frames.FilmFrames;
import org.barsheet.frames.SeenOpening;
import org.barsheet.plan.Rect;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlaceholdersTest {

  private FilmSheet demo = DemoFilm.sheet();
  private Set<String> drawn = new TreeSet<>();

  @BeforeAll
  void draw() {
    Placeholders.files(demo).forEach(file -> drawn.add(file.path()));
  }

  private interface Writing {
    void to(ByteArrayOutputStream out) throws IOException;
  }

  private static byte[] bytes(Writing writing) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      writing.to(out);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return out.toByteArray();
  }

  private static byte[] png(FilmSheet sheet, String path) {
    HandoffFile file =
        Placeholders.files(sheet).stream()
            .filter(f -> f.path().equals(path))
            .findFirst()
            .orElseThrow();
    return bytes(file.content()::writeTo);
  }

  @Test
  void every_frame_of_the_demo_resolves_to_its_plate_and_one_photograph_a_layer_or_none()
      throws IOException {
    String table = new String(bytes(out -> FramesCsv.write(demo, out)), StandardCharsets.UTF_8);
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = format.parse(new StringReader(table.substring(1)))) {
      for (CSVRecord row : rows) {
        assertThat(drawn).contains("photographs/" + row.get("plate") + ".png");
        for (int layer = 1; layer <= FramesCsv.layers(demo); layer++) {
          String photograph = row.get("layer_" + layer);
          assertThat(photograph.isEmpty() || drawn.contains("photographs/" + photograph + ".png"))
              .isTrue();
        }
      }
    }
  }

  /** Names that differ in capitals alone are one file on common systems. */
  @Test
  void no_file_of_the_demo_is_drawn_twice() {
    List<String> paths =
        Placeholders.files(demo).stream()
            .map(file -> file.path().toLowerCase(Locale.ROOT))
            .toList();
    int moved = demo.movements().stream().mapToInt(each -> each.photographs().size()).sum();
    assertThat(paths).hasSize(demo.shooting().atRest().size() + moved).doesNotHaveDuplicates();
  }

  /**
   * In panel 10 two layers show one movement at different steps; in panel 23 a movement of the
   * first layer elsewhere lies on the second. Cut out as the frame list says, each leaves free what
   * moves on the other.
   */
  @Test
  void no_layer_of_the_demo_hides_what_another_shows() throws IOException {
    assertNothingIsHidden(demo);
  }

  @Test
  void two_openings_of_one_movement_at_once_can_both_be_read() throws IOException {
    assertNothingIsHidden(SampleFilm.at(FrameRate.FPS_24).sheet());
  }

  private static void assertNothingIsHidden(FilmSheet sheet) throws IOException {
    FilmFrames frames = FilmFrames.of(sheet, drawing -> false);
    Map<String, BufferedImage> drawings = new HashMap<>();
    Map<String, HandoffFile> files = new HashMap<>();
    Placeholders.files(sheet).forEach(file -> files.put(file.path(), file));
    int looked = 0;
    for (long frame = 0; frame < sheet.timing().lengthFrames(); frame += 7) {
      FilmFrame seen = frames.at(frame);
      List<SeenOpening> moving =
          seen.openings().stream().filter(opening -> opening.shown().isPresent()).toList();
      for (SeenOpening lower : moving) {
        for (SeenOpening upper : moving) {
          if (upper.shown().orElseThrow().layer() > lower.shown().orElseThrow().layer()) {
            String name = upper.shown().orElseThrow().photograph();
            BufferedImage image = drawings.computeIfAbsent(name, one -> drawn(files, one));
            assertLeavesFree(seen, lower.shape().opening().rect(), upper, image);
            looked++;
          }
        }
      }
    }
    assertThat(looked).isPositive();
  }

  /** Points of an opening, looked up on the part of another photograph that fills the frame. */
  private static void assertLeavesFree(
      FilmFrame seen, Rect opening, SeenOpening upper, BufferedImage image) {
    PhotographCrop part = upper.shown().orElseThrow().part().orElseThrow();
    for (double across = 0.05; across < 1; across += 0.1) {
      for (double down = 0.05; down < 1; down += 0.1) {
        Rect field = seen.field();
        double x = (opening.left() + across * opening.width() - field.left()) / field.width();
        double y = (opening.top() + down * opening.height() - field.top()) / field.height();
        int column = (int) ((part.left() + x * part.width()) * image.getWidth());
        int row = (int) ((part.top() + y * part.height()) * image.getHeight());
        boolean inside =
            column >= 0 && row >= 0 && column < image.getWidth() && row < image.getHeight();
        assertThat(inside && image.getRGB(column, row) >>> 24 != 0)
            .as("%s at %s", upper.shown(), seen.strip())
            .isFalse();
      }
    }
  }

  private static BufferedImage drawn(Map<String, HandoffFile> files, String photograph) {
    HandoffFile file =
        Objects.requireNonNull(files.get("photographs/" + photograph + ".png"), photograph);
    try {
      return image(bytes(file.content()::writeTo));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @Test
  void every_photograph_of_the_timeline_is_drawn_under_the_name_it_has_there() {
    byte[] otio = bytes(out -> OtioTimeline.write(demo, "guide.wav", out));
    List<String> urls = new ArrayList<>();
    collect(JsonParser.parseString(new String(otio, StandardCharsets.UTF_8)), urls);
    List<String> photographs = urls.stream().filter(url -> url.startsWith("photographs/")).toList();
    assertThat(photographs).hasSizeGreaterThan(300);
    assertThat(photographs).allMatch(url -> drawn.contains(url.replace("%20", " ")));
  }

  private static void collect(JsonElement element, List<String> urls) {
    if (element.isJsonArray()) {
      element.getAsJsonArray().forEach(child -> collect(child, urls));
    } else if (element.isJsonObject()) {
      JsonObject object = element.getAsJsonObject();
      if (object.has("target_url")) {
        urls.add(object.get("target_url").getAsString());
      }
      object.entrySet().forEach(entry -> collect(entry.getValue(), urls));
    }
  }

  @Test
  void a_placeholder_has_the_film_s_size_and_differs_from_the_next() throws IOException {
    BufferedImage one = image(png(demo, "photographs/bakers-lamp 014.png"));
    BufferedImage next = image(png(demo, "photographs/bakers-lamp 015.png"));
    assertThat(one.getWidth()).isEqualTo(1920);
    assertThat(one.getHeight()).isEqualTo(1080);
    assertThat(pixels(one)).isNotEqualTo(pixels(next));
  }

  /** Panel 4 sees 7 of 24 squares; the opening lies where the camera of the setup sees it. */
  @Test
  void a_photograph_shows_the_whole_field_that_is_photographed() throws IOException {
    Photographs photographs = new Photographs(demo);
    Movement lamp = demo.movement("bakers-lamp");
    Rect view = photographs.view(lamp);
    Rect opening = photographs.firstOpening(lamp).rect();
    BufferedImage image = image(png(demo, "photographs/bakers-lamp 014.png"));
    int x = (int) ((opening.left() + 0.95 * opening.width() - view.left()) / view.width() * 1920);
    int y = (int) ((opening.top() + opening.height() / 2 - view.top()) / view.height() * 1080);
    assertThat(image.getRGB(x, y) >>> 24).isEqualTo(255);
    assertThat(image.getRGB(5, 5) >>> 24).isZero();
    BufferedImage plate = image(png(demo, "photographs/artwork as in panel 1.png"));
    assertThat(plate.getRGB(1900, 500) >>> 24).isEqualTo(255);
    BufferedImage moving = image(png(demo, "photographs/office-shutter 000.png"));
    assertThat(moving.getRGB(5, 500) >>> 24).isEqualTo(255);
  }

  private static BufferedImage image(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }

  @Test
  void a_photograph_is_told_from_a_placeholder(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("bakers-lamp 014.png");
    assertThat(Placeholders.mayStandAt(file)).isTrue();
    Files.write(file, png(demo, "photographs/bakers-lamp 014.png"));
    assertThat(Placeholders.mayStandAt(file)).isTrue();
    ImageIO.write(new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    assertThat(Placeholders.mayStandAt(file)).isFalse();
    Files.write(file, new byte[0]);
    assertThat(Placeholders.mayStandAt(file)).isFalse();
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_is_drawn_and_stays_in_its_folder(String text) throws IOException {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).saying(text).sheet();
    List<HandoffFile> files = Placeholders.files(sheet);
    assertThat(files).extracting(HandoffFile::path).doesNotHaveDuplicates().hasSize(2 + 11);
    assertThat(files).allMatch(file -> file.path().matches("photographs/[^/\\\\]+\\.png"));
    assertThat(image(bytes(files.get(0).content()::writeTo)).getWidth()).isEqualTo(1920);
  }
}
