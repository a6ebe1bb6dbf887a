package org.barsheet.handoff.drawing;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** A photograph of a few colors, clear at first, written as PNG. */
public final class Canvas {

  private static final String PNG_METADATA = "javax_imageio_png_1.0";

  private final BufferedImage image;
  private final Graphics2D pen;

  public Canvas(int width, int height) {
    image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_BINARY, PaperColor.palette());
    pen = image.createGraphics();
  }

  /** The whole of it. */
  public PixelRect whole() {
    return new PixelRect(0, 0, image.getWidth(), image.getHeight());
  }

  public void fill(PixelRect box, PaperColor ink) {
    pen.setColor(ink.color());
    pen.fillRect(box.x(), box.y(), box.width(), box.height());
  }

  /** A frame of so many pixels inside the box's edges. */
  public void outline(PixelRect box, int thick, PaperColor ink) {
    fill(new PixelRect(box.x(), box.y(), box.width(), thick), ink);
    fill(new PixelRect(box.x(), box.y() + box.height() - thick, box.width(), thick), ink);
    fill(new PixelRect(box.x(), box.y(), thick, box.height()), ink);
    fill(new PixelRect(box.x() + box.width() - thick, box.y(), thick, box.height()), ink);
  }

  /** One line of text at the box's left, as large as it fits, in its middle height. */
  public void text(String text, PixelRect box, PaperColor ink) {
    String drawn = PixelLetters.drawable(text);
    int squares = PixelLetters.ADVANCE * drawn.length() - 1;
    int side = Math.min(box.height() / PixelLetters.HIGH, box.width() / Math.max(1, squares));
    int top = box.y() + (box.height() - side * PixelLetters.HIGH) / 2;
    for (int i = 0; i < drawn.length() && side > 0; i++) {
      letter(drawn.charAt(i), box.x() + i * PixelLetters.ADVANCE * side, top, side, ink);
    }
  }

  private void letter(char letter, int x, int y, int side, PaperColor ink) {
    for (int row = 0; row < PixelLetters.HIGH; row++) {
      for (int column = 0; column < PixelLetters.WIDE; column++) {
        if (PixelLetters.isInked(letter, column, row)) {
          fill(new PixelRect(x + column * side, y + row * side, side, side), ink);
        }
      }
    }
  }

  /**
   * Writes it as PNG.
   *
   * @param keyword of a text kept in the file, 1 to 79 Latin letters (W3C PNG, tEXt)
   * @param text what it says
   */
  public void writePng(OutputStream out, String keyword, String text) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(null, new IIOImage(image, null, saying(writer, keyword, text)), null);
    } finally {
      writer.dispose();
    }
  }

  private IIOMetadata saying(ImageWriter writer, String keyword, String text) throws IOException {
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
    IIOMetadataNode entry = new IIOMetadataNode("tEXtEntry");
    entry.setAttribute("keyword", keyword);
    entry.setAttribute("value", text);
    IIOMetadataNode texts = new IIOMetadataNode("tEXt");
    texts.appendChild(entry);
    IIOMetadataNode root = new IIOMetadataNode(PNG_METADATA);
    root.appendChild(texts);
    metadata.mergeTree(PNG_METADATA, root);
    return metadata;
  }
}
