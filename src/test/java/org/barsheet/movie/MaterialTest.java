package org.barsheet.movie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.FilmFrame;
import org.barsheet.frames.FilmFrames;
import org.barsheet.frames.SeenOpening;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.outside.OutsideProgram;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photographs and clips lie in the movie's frames as soon as they are there. */
class MaterialTest {

  private static final int WIDTH = 320;

  @TempDir private Path folder = Path.of("");

  private final FilmSheet film = SampleFilm.at(FrameRate.FPS_24).sheet();
  private final FilmFrames frames = FilmFrames.of(film, drawing -> false);

  /** Files by photograph or performer. */
  private record There(Map<String, Path> files) implements Material {
    @Override
    public Optional<Path> photograph(String name) {
      return Optional.ofNullable(files.get(name));
    }

    @Override
    public Optional<Path> clip(Performer performer) {
      return Optional.ofNullable(files.get(performer.name()));
    }
  }

  private void draw(FrameSpan span, Map<String, Path> files, FrameSink sink) throws IOException {
    Optional<Ffmpeg> ffmpeg = Optional.of(Ffmpeg.find(Optional.empty()));
    new Movie(film, new MovieOrder(span, WIDTH, false), new There(files), ffmpeg)
        .draw(sink, (done, all) -> {});
  }

  /** The pixel at the middle of an opening, if it lies in the frame. */
  private Optional<Color> middle(BufferedImage image, long frame, int opening) {
    FilmFrame seen = frames.at(frame);
    View view = View.of(Sizes.of(film.plan().film(), WIDTH, false), seen.field());
    Rect rect = seen.openings().get(opening).shape().opening().rect();
    int x = (int) (view.left() + view.scale() * (rect.left() + rect.width() / 2));
    int y = (int) (view.top() + view.scale() * (rect.top() + rect.height() / 2));
    boolean inside = x >= 0 && y >= 0 && x < image.getWidth() && y < image.getHeight();
    return inside ? Optional.of(new Color(image.getRGB(x, y))) : Optional.empty();
  }

  /** Each frame of the clip is a gray of its own: 28 + 5 · (its number modulo 40) in 4:2:0 luma. */
  private Path clip() throws IOException, InterruptedException {
    Path clip = folder.resolve("cello.mov");
    OutsideProgram.output(
        "ffmpeg",
        "-v",
        "error",
        "-f",
        "lavfi",
        "-i",
        "color=c=black:s=64x96:r=30000/1001:d=24,format=yuv420p,geq=lum='28+5*mod(N,40)':cb=128:cr=128",
        "-c:v",
        "libx264",
        "-preset",
        "ultrafast",
        "-qp",
        "0",
        clip.toString());
    return clip;
  }

  @Test
  void a_clip_lies_in_its_opening_with_the_frame_that_the_inserts_table_names()
      throws IOException, InterruptedException {
    Map<String, Path> files = Map.of("cello", clip());
    int[] looked = new int[1];
    draw(
        new FrameSpan(186, 260),
        files,
        (image, frame) -> {
          SeenOpening opening = frames.at(frame).openings().get(0);
          long clipFrame = opening.inserts().get(0).clipFrame().orElseThrow();
          Optional<Color> color = middle(image, frame, 0);
          if (color.isPresent()) {
            double luma = 16 + color.get().getGreen() * 219 / 255.0;
            assertThat(luma)
                .as("clip frame %s on frame %s", clipFrame, frame)
                .isCloseTo(28 + 5.0 * (clipFrame % 40), within(2.45));
            looked[0]++;
          }
        });
    assertThat(looked[0]).isGreaterThan(50);
  }

  @Test
  void a_clip_that_is_none_is_a_box_with_a_name() throws IOException {
    Path broken = Files.writeString(folder.resolve("cello.mov"), "no clip");
    int[] drawn = new int[1];
    draw(new FrameSpan(200, 204), Map.of("cello", broken), (image, frame) -> drawn[0]++);
    assertThat(drawn[0]).isEqualTo(4);
  }

  /** A photograph of one color fills the frame; the next one lies over it where it moves. */
  @Test
  void photographs_take_the_place_of_what_is_drawn() throws IOException {
    Map<String, Path> files = new HashMap<>();
    files.put("small-lamp 010", photograph("010", Color.MAGENTA));
    draw(
        new FrameSpan(200, 201),
        files,
        (image, frame) -> {
          FilmFrame seen = frames.at(frame);
          assertThat(seen.openings().get(0).shown().orElseThrow().photograph())
              .isEqualTo("small-lamp 010");
          assertThat(new Color(image.getRGB(WIDTH - 3, 3))).isEqualTo(Color.MAGENTA);
          assertThat(middle(image, frame, 1)).contains(Color.MAGENTA);
        });
  }

  private Path photograph(String name, Color color) throws IOException {
    BufferedImage image = new BufferedImage(320, 180, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(color);
    pen.fillRect(0, 0, 320, 180);
    Path file = folder.resolve(name + ".png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }
}
