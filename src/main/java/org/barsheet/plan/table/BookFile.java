package org.barsheet.plan.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.util.XMLHelper;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;
import org.barsheet.plan.source.PlanReading;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** The parts of a workbook's file (Office Open XML, ECMA-376), unpacked within limits. */
public final class BookFile implements AutoCloseable {

  /** Bytes of all its XML once unpacked. */
  static final int MOST_UNPACKED = 32_000_000;

  /** Parts in the archive. */
  static final int MOST_PARTS = 2000;

  private final Path file;
  private final ZipFile zip;
  private final Optional<Path> copy;

  private BookFile(Path file, ZipFile zip, Optional<Path> copy) {
    this.file = file;
    this.zip = zip;
    this.copy = copy;
  }

  /**
   * Opens a workbook and measures what it unpacks to.
   *
   * @throws InputException if it is no archive, or beyond a limit
   */
  static BookFile open(Path file, PlanReading reading) {
    Optional<Path> copy = reading.held(file).map(BookFile::copy);
    if (copy.isEmpty()) {
      GivenFile.check(file, Limit.WORKBOOK);
    }
    ZipFile zip;
    try {
      zip = new ZipFile(copy.orElse(file).toFile());
    } catch (IOException | IllegalArgumentException wrong) {
      throw problem(file, "this .xlsx workbook is incomplete", "save it again as .xlsx");
    }
    BookFile book = new BookFile(file, zip, copy);
    try {
      book.measure();
      return book;
    } catch (InputException wrong) {
      book.close();
      throw wrong;
    }
  }

  /** A workbook that isn't on the disk, as a file for as long as it is read. */
  private static Path copy(byte[] bytes) {
    try {
      return Files.write(Files.createTempFile("barsheet", ".xlsx"), bytes);
    } catch (IOException full) {
      throw new UncheckedIOException(full);
    }
  }

  private static InputException problem(Path file, String sentence, String remedy) {
    return new InputException(Problem.ofFile(file.toString(), sentence, remedy));
  }

  private void measure() {
    if (zip.size() > MOST_PARTS) {
      throw tooLarge("the workbook has more than " + MOST_PARTS + " parts");
    }
    long unpacked = 0;
    byte[] buffer = new byte[64 * 1024];
    Enumeration<? extends ZipEntry> entries = zip.entries();
    while (entries.hasMoreElements()) {
      ZipEntry entry = entries.nextElement();
      String name = entry.getName().toLowerCase(Locale.ROOT);
      if (name.endsWith(".xml") || name.endsWith(".rels")) {
        unpacked = measure(entry, unpacked, buffer);
      }
    }
  }

  private long measure(ZipEntry entry, long before, byte[] buffer) {
    long unpacked = before;
    try (InputStream in = zip.getInputStream(entry)) {
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        unpacked += read;
        if (unpacked > MOST_UNPACKED) {
          throw tooLarge("the workbook unpacks to more than " + MOST_UNPACKED / 1_000_000 + " MB");
        }
      }
    } catch (IOException | IllegalArgumentException wrong) {
      throw damaged(entry.getName());
    }
    return unpacked;
  }

  private InputException tooLarge(String sentence) {
    return problem(file, sentence, "this is the limit for a plan; check the file");
  }

  private InputException damaged(String part) {
    return problem(
        file, "the part " + part + " of the workbook is damaged", "save it again as .xlsx");
  }

  boolean has(String part) {
    return zip.getEntry(part) != null;
  }

  /** Reads a part's XML; document types and what they could include are refused. */
  void read(String part, DefaultHandler handler) {
    ZipEntry entry = zip.getEntry(part);
    if (entry == null) {
      throw damaged(part);
    }
    try (InputStream in = zip.getInputStream(entry)) {
      XMLReader reader = XMLHelper.newXMLReader();
      reader.setContentHandler(handler);
      reader.setErrorHandler(handler);
      reader.parse(new InputSource(in));
    } catch (IOException
        | IllegalArgumentException
        | SAXException
        | ParserConfigurationException wrong) {
      throw damaged(part);
    }
  }

  /** The part of a kind that a part refers to, if there is one. */
  Optional<String> related(String part, String kind) {
    return Relations.of(this, part).ofKind(kind);
  }

  @Override
  public void close() {
    try {
      zip.close();
      if (copy.isPresent()) {
        Files.deleteIfExists(copy.get());
      }
    } catch (IOException ignored) {
      // Everything wanted has been read.
    }
  }
}
