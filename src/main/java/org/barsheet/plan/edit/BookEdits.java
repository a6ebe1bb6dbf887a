package org.barsheet.plan.edit;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.table.BookReader;
import org.barsheet.plan.table.CellPlace;
import org.barsheet.plan.table.TableChange;

/** Changes cells of a workbook; parts of its archive that hold none of them are copied packed. */
final class BookEdits {

  /** What becomes of the XML of a worksheet. */
  private interface SheetChange {
    String of(String xml, SheetNeeds needs);
  }

  private BookEdits() {}

  /**
   * The workbook's bytes with some cells changed.
   *
   * @param file a workbook that was read without fault
   * @param bytes what it holds
   */
  static byte[] of(Path file, byte[] bytes, List<CellEdit> edits) {
    Map<String, List<CellEdit>> bySheet = new LinkedHashMap<>();
    for (CellEdit edit : edits) {
      String sheet = CellPlace.of(edit.position()).orElseThrow().sheet();
      bySheet.computeIfAbsent(sheet, none -> new ArrayList<>()).add(edit);
    }
    Map<String, SheetChange> sheets = new LinkedHashMap<>();
    bySheet.forEach(
        (sheet, own) ->
            sheets.put(
                sheet,
                (xml, needs) ->
                    Splice.apply(xml, SheetEdits.of(file.toString(), sheet, xml, own))));
    return with(file, bytes, sheets);
  }

  /**
   * The workbook's bytes with cells and rows changed.
   *
   * @param file a workbook that was read without fault
   * @param bytes what it holds
   */
  static byte[] with(Path file, byte[] bytes, List<TableChange> changes) {
    Map<String, SheetChange> sheets = new LinkedHashMap<>();
    for (TableChange change : changes) {
      sheets.put(change.sheet(), (xml, needs) -> SheetRows.of(file.toString(), xml, change, needs));
    }
    return with(file, bytes, sheets);
  }

  private static byte[] with(Path file, byte[] bytes, Map<String, SheetChange> sheets) {
    Map<String, String> parts = BookReader.parts(file, new PlanReading(file, Map.of(file, bytes)));
    Map<String, String> byPart = new LinkedHashMap<>();
    sheets.keySet().forEach(sheet -> byPart.put(Objects.requireNonNull(parts.get(sheet)), sheet));
    ByteArrayOutputStream edited = new ByteArrayOutputStream(bytes.length + 1024);
    try (ZipFile from =
            ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get();
        ZipArchiveOutputStream to = new ZipArchiveOutputStream(edited)) {
      for (ZipArchiveEntry entry : Collections.list(from.getEntriesInPhysicalOrder())) {
        String sheet = byPart.get(entry.getName());
        if (sheet == null) {
          to.addRawArchiveEntry(entry, from.getRawInputStream(entry));
        } else {
          try (InputStream in = from.getInputStream(entry)) {
            SheetChange change = Objects.requireNonNull(sheets.get(sheet));
            SheetNeeds needs = SheetNeeds.of(from, sheet, entry.getName());
            put(to, entry, edited(file, in.readAllBytes(), xml -> change.of(xml, needs)));
          }
        }
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return edited.toByteArray();
  }

  private static void put(ZipArchiveOutputStream to, ZipArchiveEntry old, byte[] content)
      throws IOException {
    ZipArchiveEntry entry = new ZipArchiveEntry(old.getName());
    entry.setTime(old.getTime());
    to.putArchiveEntry(entry);
    to.write(content);
    to.closeArchiveEntry();
  }

  private static byte[] edited(Path file, byte[] part, UnaryOperator<String> change) {
    Charset charset = charset(part);
    String xml = new String(part, charset);
    if (!Arrays.equals(xml.getBytes(charset), part)) {
      String sentence = "its worksheets are not written in UTF-8 or UTF-16";
      throw new InputException(Problem.ofFile(file.toString(), sentence, "save it again as .xlsx"));
    }
    return change.apply(xml).getBytes(charset);
  }

  /** UTF-8, or UTF-16 where the first sign shows it (XML 1.0, appendix F). */
  private static Charset charset(byte[] part) {
    int start = part.length < 2 ? 0x2020 : ((part[0] & 0xFF) << 8) | (part[1] & 0xFF);
    return switch (start) {
      case 0xFEFF, '<' -> StandardCharsets.UTF_16BE;
      case 0xFFFE, '<' << 8 -> StandardCharsets.UTF_16LE;
      default -> StandardCharsets.UTF_8;
    };
  }
}
