package org.barsheet.workbook.typed;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/**
 * What people typed into the cells of a workbook that are theirs. A cell is found again by the
 * permanent names of its row and its column, wherever they are now; so other headings, sorting,
 * filtering and moved columns do no harm.
 */
public final class TypedCells {

  /** What the names of everybody's own sheets begin with, and the one sheet of a larger company. */
  public static final String CALL = "Call";

  public static final String CALLS = "Calls";

  public static final TypedCells NONE = new TypedCells(Map.of());

  /** How a word is said stands beside it where it came from an input method; nobody typed that. */
  private static final boolean WITH_PHONETIC_RUNS = false;

  /** Sheet, row name, name of the column, text. */
  private final Map<String, Map<String, Map<String, String>>> sheets;

  private TypedCells(Map<String, Map<String, Map<String, String>>> sheets) {
    this.sheets = sheets;
  }

  /**
   * Reads a workbook sheet by sheet, row by row. A file that is no workbook of ours, or none at
   * all, holds nothing typed.
   *
   * @throws IOException if the file cannot be read from the disk
   */
  public static TypedCells read(Path workbook) throws IOException {
    if (!Files.isRegularFile(workbook) || SealedWorkbook.holdsNothingTyped(workbook)) {
      return NONE;
    }
    try (OPCPackage file = OPCPackage.open(workbook.toFile(), PackageAccess.READ)) {
      return read(file);
    } catch (OpenXML4JException
        | OpenXML4JRuntimeException
        | POIXMLException
        | IllegalArgumentException
        | IndexOutOfBoundsException
        | SAXException
        | ParserConfigurationException noWorkbook) {
      return NONE;
    }
  }

  private static TypedCells read(OPCPackage file)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    XSSFReader reader = new XSSFReader(file);
    ReadOnlySharedStringsTable texts = new ReadOnlySharedStringsTable(file, WITH_PHONETIC_RUNS);
    Map<String, Map<String, Map<String, String>>> sheets = new TreeMap<>();
    XSSFReader.SheetIterator each = (XSSFReader.SheetIterator) reader.getSheetsData();
    while (each.hasNext()) {
      try (InputStream content = each.next()) {
        TypedRows rows =
            new TypedRows(sheets.computeIfAbsent(kind(each.getSheetName()), k -> new TreeMap<>()));
        XMLReader xml = XMLHelper.newXMLReader();
        xml.setContentHandler(
            new XSSFSheetXMLHandler(
                reader.getStylesTable(), texts, rows, new DataFormatter(Locale.ROOT), false));
        xml.parse(new InputSource(content));
      }
    }
    return new TypedCells(sheets);
  }

  boolean isEmpty() {
    return sheets.values().stream().allMatch(Map::isEmpty);
  }

  /** How many cells were typed into. */
  int count() {
    return sheets.values().stream()
        .flatMap(rows -> rows.values().stream())
        .mapToInt(Map::size)
        .sum();
  }

  /**
   * Sheets that are parted go by one name: {@code Exposure 2} is {@code Exposure}, and everybody's
   * call is {@code Calls}, on one sheet or on many.
   */
  static String kind(String sheet) {
    return (sheet + " ").startsWith(CALL + " ") ? CALLS : sheet.replaceFirst(" \\d+$", "");
  }

  /**
   * What was typed into one row.
   *
   * @param sheet name of its sheet
   * @param rowName permanent name of the row
   * @return name of the column to text
   */
  Map<String, String> in(String sheet, String rowName) {
    return sheets.getOrDefault(kind(sheet), Map.of()).getOrDefault(rowName, Collections.emptyMap());
  }
}
