package org.barsheet.photographs;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import javax.imageio.stream.ImageInputStream;
import org.barsheet.input.Limit;
import org.barsheet.input.PlainText;
import org.barsheet.pixels.ColorImage;
import org.jspecify.annotations.Nullable;

/** Reads photographs: first what their files say of them, then their pixels. */
public final class PhotographReader {

  /** Larger ones are read with every second pixel, or third …: what is left says enough. */
  private static final long MOST_DECODED = 26_000_000;

  private PhotographReader() {}

  /**
   * What a JPEG or PNG file says of its photograph. No pixel is decoded.
   *
   * @throws UnreadablePhotographException if it is of another kind, damaged or too large
   */
  public static PhotoFacts facts(Path file) throws UnreadablePhotographException {
    FileKind kind = kind(file);
    if (!kind.isRead()) {
      throw new UnreadablePhotographException(
          "is " + (kind == FileKind.OTHER ? "neither a JPEG nor a PNG" : kind.words()),
          "save it as JPEG or PNG; set the camera or phone to JPEG next time");
    }
    checkLength(file);
    Dimension size = reading(file, PhotographReader::size);
    return facts(file, size);
  }

  /** What kind of file it is. */
  static FileKind kind(Path file) throws UnreadablePhotographException {
    if (!Files.isRegularFile(file)) {
      return FileKind.OTHER;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return FileKind.of(String.valueOf(file.getFileName()), in.readNBytes(FileKind.HEAD));
    } catch (IOException unreadable) {
      throw refused();
    }
  }

  private static UnreadablePhotographException refused() {
    return new UnreadablePhotographException(
        "can't be opened", "check that you're allowed to read it");
  }

  private static UnreadablePhotographException damaged() {
    return new UnreadablePhotographException(
        "is damaged or cut short", "copy it from the camera again, or take it again");
  }

  private static void checkLength(Path file) throws UnreadablePhotographException {
    try {
      if (Files.size(file) > Limit.PHOTOGRAPH.bytes()) {
        throw new UnreadablePhotographException(
            "has more than " + Limit.PHOTOGRAPH.megabytes() + " MB", "save it smaller, as JPEG");
      }
    } catch (IOException gone) {
      throw refused();
    }
  }

  private interface Reading<T> {
    T of(ImageReader reader) throws IOException, UnreadablePhotographException;
  }

  private static <T> T reading(Path file, Reading<T> reading) throws UnreadablePhotographException {
    try (ImageInputStream in = new FileImageInputStream(file.toFile())) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw damaged();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        return reading.of(reader);
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException wrong) {
      // The JDK's readers trust the numbers in a file and trip over wrong ones.
      throw damaged();
    }
  }

  private static Dimension size(ImageReader reader)
      throws IOException, UnreadablePhotographException {
    Dimension size = new Dimension(reader.getWidth(0), reader.getHeight(0));
    if ((long) size.width * size.height > Limit.PHOTOGRAPH_PIXELS) {
      throw new UnreadablePhotographException(
          "has more than " + Limit.PHOTOGRAPH_PIXELS / 1_000_000 + " million pixels",
          "save it smaller");
    }
    return size;
  }

  private static PhotoFacts facts(Path file, Dimension size) {
    Metadata metadata = metadata(file);
    Directory image = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
    Directory exif = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
    int orientation = orientation(image);
    boolean turned = orientation > 4;
    String second = text(exif, ExifSubIFDDirectory.TAG_SUBSECOND_TIME_ORIGINAL);
    String taken = text(exif, ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL);
    return new PhotoFacts(
        turned ? size.height : size.width,
        turned ? size.width : size.height,
        orientation,
        taken.isEmpty() || !second.matches("\\d+") ? taken : taken + "." + second,
        joined(text(image, ExifIFD0Directory.TAG_MAKE), text(image, ExifIFD0Directory.TAG_MODEL)),
        text(exif, ExifSubIFDDirectory.TAG_LENS_MODEL),
        told(exif, ExifSubIFDDirectory.TAG_FOCAL_LENGTH),
        joined(
            told(exif, ExifSubIFDDirectory.TAG_EXPOSURE_TIME),
            told(exif, ExifSubIFDDirectory.TAG_FNUMBER),
            iso(text(exif, ExifSubIFDDirectory.TAG_ISO_EQUIVALENT))),
        told(exif, ExifSubIFDDirectory.TAG_WHITE_BALANCE_MODE));
  }

  private static String iso(String sensitivity) {
    return sensitivity.isEmpty() ? "" : "ISO " + sensitivity;
  }

  private static String joined(String... words) {
    return Stream.of(words).filter(word -> !word.isEmpty()).collect(Collectors.joining(" "));
  }

  /** What the library can make of a JPEG's EXIF; a photograph without it is still one. */
  private static Metadata metadata(Path file) {
    try {
      return kind(file) == FileKind.JPEG
          ? JpegMetadataReader.readMetadata(file.toFile(), List.of(new ExifReader()))
          : new Metadata();
    } catch (JpegProcessingException
        | IOException
        | RuntimeException
        | UnreadablePhotographException unreadable) {
      return new Metadata();
    }
  }

  private static int orientation(@Nullable Directory image) {
    Integer value = image == null ? null : image.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
    return value == null || value < 1 || value > 8 ? 1 : value;
  }

  private static String text(@Nullable Directory directory, int tag) {
    String text = directory == null ? null : directory.getString(tag);
    return text == null ? "" : PlainText.of(text).strip();
  }

  private static String told(@Nullable Directory directory, int tag) {
    String text = directory == null ? null : directory.getDescription(tag);
    return text == null ? "" : PlainText.of(text).strip();
  }

  /** Of how many pixels, in each direction, one is decoded. */
  static int every(PhotoFacts facts) {
    long pixels = (long) facts.width() * facts.height();
    return Math.max(1, (int) Math.ceil(Math.sqrt((double) pixels / MOST_DECODED)));
  }

  /**
   * The pixels of a photograph as it is seen.
   *
   * @throws UnreadablePhotographException if they cannot be decoded
   */
  static ColorImage decode(Path file, PhotoFacts facts) throws UnreadablePhotographException {
    int every = every(facts);
    BufferedImage image =
        reading(
            file,
            reader -> {
              ImageReadParam param = reader.getDefaultReadParam();
              param.setSourceSubsampling(every, every, 0, 0);
              AtomicBoolean cut = new AtomicBoolean();
              reader.addIIOReadWarningListener(
                  (source, warning) -> cut.compareAndSet(false, isCut(warning)));
              BufferedImage read = reader.read(0, param);
              if (cut.get()) {
                throw damaged();
              }
              return read;
            });
    return ColorImage.of(Turned.upright(image, facts.orientation()));
  }

  /** The JPEG library paints gray what is missing, and only warns. */
  private static boolean isCut(String warning) {
    return warning.contains("remature end") || warning.contains("orrupt");
  }
}
