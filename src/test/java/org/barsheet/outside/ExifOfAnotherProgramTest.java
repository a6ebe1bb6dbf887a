package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.barsheet.photographs.Exif;
import org.barsheet.photographs.PhotoFacts;
import org.barsheet.photographs.PhotographReader;
import org.barsheet.photographs.UnreadablePhotographException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What ImageMagick reads of a photograph's EXIF is what we read. */
class ExifOfAnotherProgramTest {

  @TempDir private Path folder = Path.of("");

  @Test
  void time_camera_and_orientation_are_those_that_another_program_reads()
      throws IOException, InterruptedException, UnreadablePhotographException {
    BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_3BYTE_BGR);
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", jpeg);
    Path file = Files.write(folder.resolve("a.jpg"), Exif.into(jpeg.toByteArray(), 6));
    String theirs =
        OutsideProgram.output(
            "identify",
            "-format",
            "%[EXIF:DateTimeOriginal].%[EXIF:SubSecTimeOriginal]|%[EXIF:Make] %[EXIF:Model]|%[orientation]|%w",
            file.toString());
    PhotoFacts ours = PhotographReader.facts(file);
    assertThat(theirs).isEqualTo(ours.taken() + "|" + ours.camera() + "|RightTop|" + ours.height());
    assertThat(ours.orientation()).isEqualTo(6);
  }
}
