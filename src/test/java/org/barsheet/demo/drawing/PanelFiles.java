package org.barsheet.demo.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes the panels as PNG files {@code 01.png} to {@code 26.png}. */
public final class PanelFiles {

  private PanelFiles() {}

  /** Draws every panel into a folder. */
  public static void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    List<PanelDrawing> panels = Storyboard.panels();
    for (int number = 1; number <= panels.size(); number++) {
      Files.write(folder.resolve(name(number)), png(panels.get(number - 1)));
    }
  }

  static String name(int number) {
    return String.format(Locale.ROOT, "%02d.png", number);
  }

  private static byte[] png(PanelDrawing panel) {
    ImageIO.setUseCache(false);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam smallest = writer.getDefaultWriteParam();
      smallest.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      smallest.setCompressionQuality(0);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(panel.drawing(), null, null), smallest);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
