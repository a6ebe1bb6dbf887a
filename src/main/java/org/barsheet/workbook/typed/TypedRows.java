package org.barsheet.workbook.typed;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler.SheetContentsHandler;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.jspecify.annotations.Nullable;

/** Picks what was typed out of the rows of one sheet, as they go by. */
final class TypedRows implements SheetContentsHandler {

  private final Map<String, Map<String, String>> typed;
  private final Map<Integer, String> row = new HashMap<>();

  /** Columns people fill in, with their names; empty until the headings have gone by. */
  private final Map<Integer, String> theirs = new TreeMap<>();

  private int nameColumn = -1;

  /**
   * @param typed takes what is found: row name, name of the column, text
   */
  TypedRows(Map<String, Map<String, String>> typed) {
    this.typed = typed;
  }

  @Override
  public void startRow(int number) {
    row.clear();
  }

  @Override
  public void cell(@Nullable String address, @Nullable String text, @Nullable XSSFComment note) {
    if (address != null && text != null && !text.isBlank()) {
      row.put((int) new CellReference(address).getCol(), text);
    }
  }

  @Override
  public void endRow(int number) {
    if (nameColumn < 0) {
      row.forEach(this::lookForHeadings);
    } else {
      // We write nothing of our own there on a row without a name: such a note has no row to find,
      // but it counts.
      String name = row.getOrDefault(nameColumn, "unnamed, at " + number);
      theirs.forEach((column, called) -> keep(name, called, row.get(column)));
    }
  }

  private void lookForHeadings(int column, String text) {
    if (RowNames.isHeading(text)) {
      nameColumn = column;
      Map<String, String> names = RowNames.fillIns(text);
      row.forEach(
          (at, heading) -> {
            String name = names.get(heading);
            if (name != null && !theirs.containsValue(name)) {
              theirs.put(at, name);
            }
          });
    }
  }

  /** A row that was copied by hand stands twice: the upper one counts. */
  private void keep(String rowName, String column, @Nullable String text) {
    if (text != null) {
      typed.computeIfAbsent(rowName, n -> new TreeMap<>()).putIfAbsent(column, text);
    }
  }
}
