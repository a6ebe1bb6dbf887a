package org.barsheet.plan.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.source.PlanReading;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Reads the worksheets of a workbook as grids of cells. */
public final class BookReader {

  private BookReader() {}

  /**
   * Every worksheet by its name, in the workbook's order.
   *
   * @throws InputException if the file is no workbook, damaged, or beyond a limit
   */
  static Map<String, Grid> read(Path file, PlanReading reading) {
    try (BookFile book = BookFile.open(file, reading)) {
      String workbook = workbook(book, file);
      Relations relations = Relations.of(book, workbook);
      SheetList list = sheets(book, workbook, relations);
      SharedTexts shared = new SharedTexts();
      relations
          .ofKind("sharedStrings")
          .filter(book::has)
          .ifPresent(part -> book.read(part, shared));
      CellFormats formats = new CellFormats(list.from1904);
      relations.ofKind("styles").filter(book::has).ifPresent(part -> book.read(part, formats));
      Map<String, Grid> grids = new LinkedHashMap<>();
      list.parts.forEach(
          (name, part) -> {
            SheetCells cells = new SheetCells(file.toString(), name, shared, formats);
            book.read(part, cells);
            grids.put(name, cells.grid());
          });
      return grids;
    }
  }

  /**
   * The name of each worksheet's part in the archive, by the worksheet's name.
   *
   * @throws InputException as {@link #read}
   */
  public static Map<String, String> parts(Path file, PlanReading reading) {
    try (BookFile book = BookFile.open(file, reading)) {
      String workbook = workbook(book, file);
      return Map.copyOf(sheets(book, workbook, Relations.of(book, workbook)).parts);
    }
  }

  private static String workbook(BookFile book, Path file) {
    return book.related("", "officeDocument").filter(book::has).orElseThrow(() -> noBook(file));
  }

  private static SheetList sheets(BookFile book, String workbook, Relations relations) {
    SheetList list = new SheetList(relations);
    book.read(workbook, list);
    return list;
  }

  private static InputException noBook(Path file) {
    return new InputException(
        Problem.ofFile(
            file.toString(),
            "this is not an .xlsx workbook",
            "save it as .xlsx (Office Open XML)"));
  }

  /** The workbook's own part: which worksheets there are. */
  private static final class SheetList extends DefaultHandler {

    private final Relations relations;
    private final Map<String, String> parts = new LinkedHashMap<>();
    private boolean from1904;

    SheetList(Relations relations) {
      this.relations = relations;
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) {
      if (name.equals("workbookPr")) {
        String value = attributes.getValue("date1904");
        from1904 = "1".equals(value) || "true".equals(value);
      }
      String sheet = attributes.getValue("name");
      if (name.equals("sheet") && sheet != null) {
        for (int i = 0; i < attributes.getLength(); i++) {
          if (attributes.getLocalName(i).equals("id")) {
            relations
                .withId(attributes.getValue(i))
                .filter(part -> part.contains("worksheets/"))
                .ifPresent(part -> parts.putIfAbsent(sheet, part));
          }
        }
      }
    }
  }

  /** Texts that cells share; how they are pronounced is left out. */
  static final class SharedTexts extends DefaultHandler {

    private final List<String> texts = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private boolean inText;
    private boolean pronounced;

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) {
      switch (name) {
        case "si" -> text.setLength(0);
        case "rPh" -> pronounced = true;
        case "t" -> inText = !pronounced;
        default -> {}
      }
    }

    @Override
    public void endElement(String uri, String name, String qualified) {
      switch (name) {
        case "si" -> texts.add(text.toString());
        case "rPh" -> pronounced = false;
        case "t" -> inText = false;
        default -> {}
      }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
      if (inText) {
        text.append(characters, start, length);
      }
    }

    /** The text of a number, or "" where there is none of that number. */
    String text(String number) {
      int index = CellPlace.whole(number);
      return index >= 0 && index < texts.size() ? texts.get(index) : "";
    }
  }
}
