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
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
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

  public static final TypedCells NONE = new TypedCells(Map.of(), true);

  private static final TypedCells UNREADABLE = new TypedCells(Map.of(), false);

  /** How a word is said stands beside it where it came from an input method; nobody typed that. */
  private static final boolean WITH_PHONETIC_RUNS = false;

  /** Sheet, row name, name of the column, text. */
  private final Map<String, Map<String, Map<String, String>>> sheets;

  private final boolean readable;

  private TypedCells(Map<String, Map<String, Map<String, String>>> sheets, boolean readable) {
    this.sheets = sheets;
    this.readable = readable;
  }

  /**
   * Reads a workbook sheet by sheet, row by row. A workbook of somebody else, or none at all, holds
   * nothing typed; of one that is damaged anywhere nothing is taken.
   */
  public static TypedCells read(Path workbook) {
    if (!Files.isRegularFile(workbook) || SealedWorkbook.holdsNothingTyped(workbook)) {
      return NONE;
    }
    try {
      SealedWorkbook.checkContent(workbook);
      try (OPCPackage file = OPCPackage.open(workbook.toFile(), PackageAccess.READ)) {
        return read(file);
      }
    } catch (IOException
        | OpenXML4JException
        | SAXException
        | ParserConfigurationException
        | RuntimeException damaged) {
      // The library trusts the numbers in a file and trips over wrong ones in ways of all kinds.
      return UNREADABLE;
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
    return new TypedCells(sheets, true);
  }

  /** Whether the file could be read to its end, so that nothing typed into it is missing here. */
  boolean isReadable() {
    return readable;
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
   * What was typed on a sheet.
   *
   * @return row name to name of the column to text
   */
  public Map<String, Map<String, String>> rows(String sheet) {
    return Collections.unmodifiableMap(sheets.getOrDefault(kind(sheet), Map.of()));
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
