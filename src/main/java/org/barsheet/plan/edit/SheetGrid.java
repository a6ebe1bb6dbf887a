package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.barsheet.plan.table.CellPlace;

/** Rows and cells of a worksheet's XML with their places in it. */
final class SheetGrid {

  /**
   * A cell.
   *
   * @param column counted from 0
   * @param tag that opens it
   * @param from index of its first character
   * @param to index after its last
   * @param inside names of the elements in it
   */
  record Cell(int column, XmlTag tag, int from, int to, List<String> inside) {

    boolean isBlank() {
      return inside.stream().noneMatch(name -> List.of("v", "t", "f").contains(name));
    }

    boolean isFormula() {
      return inside.contains("f");
    }

    boolean isNumber() {
      String type = tag.attribute("t");
      return (type.isEmpty() || type.equals("n")) && inside.contains("v");
    }
  }

  /**
   * A row, which may not be there yet.
   *
   * @param number counted from 1
   * @param tag that opens it; nothing where there is none
   * @param end index of the tag that closes it, or after it where one tag is all of it
   */
  record Row(int number, Optional<XmlTag> tag, int end, List<Cell> cells) {

    boolean isBlank() {
      return cells.stream().allMatch(Cell::isBlank);
    }
  }

  private final List<Row> rows = new ArrayList<>();
  private XmlTag data = new XmlTag(0, 0, "", "", XmlTag.Kind.EMPTY, "");
  private int endOfData;

  SheetGrid(String xml) {
    List<XmlTag> tags = XmlTag.all(xml);
    int at = 0;
    while (at < tags.size()) {
      XmlTag tag = tags.get(at);
      if (tag.name().equals("sheetData")) {
        endOfData = tag.kind() == XmlTag.Kind.EMPTY ? tag.to() : tag.from();
        data = tag.kind() == XmlTag.Kind.CLOSES ? data : tag;
      }
      boolean row = tag.name().equals("row") && tag.kind() != XmlTag.Kind.CLOSES;
      at = row ? readRow(tags, at) : at + 1;
    }
  }

  private int readRow(List<XmlTag> tags, int first) {
    XmlTag opens = tags.get(first);
    int stated = CellPlace.whole(opens.attribute("r"));
    int number = stated > 0 ? stated : rows.isEmpty() ? 1 : rows.get(rows.size() - 1).number() + 1;
    List<Cell> cells = new ArrayList<>();
    int at = first + 1;
    if (opens.kind() == XmlTag.Kind.EMPTY) {
      rows.add(new Row(number, Optional.of(opens), opens.to(), cells));
      return at;
    }
    while (!closes(tags.get(at), "row")) {
      at = tags.get(at).name().equals("c") ? readCell(tags, at, cells) : at + 1;
    }
    rows.add(new Row(number, Optional.of(opens), tags.get(at).from(), cells));
    return at + 1;
  }

  private static boolean closes(XmlTag tag, String name) {
    return tag.kind() == XmlTag.Kind.CLOSES && tag.name().equals(name);
  }

  private static int readCell(List<XmlTag> tags, int first, List<Cell> cells) {
    XmlTag opens = tags.get(first);
    int stated = CellPlace.columnOf(opens.attribute("r"));
    int column =
        stated >= 0 ? stated : cells.isEmpty() ? 0 : cells.get(cells.size() - 1).column() + 1;
    List<String> inside = new ArrayList<>();
    int last = first;
    if (opens.kind() != XmlTag.Kind.EMPTY) {
      do {
        last++;
        inside.add(tags.get(last).name());
      } while (!closes(tags.get(last), "c"));
    }
    cells.add(new Cell(column, opens, opens.from(), tags.get(last).to(), inside));
    return last + 1;
  }

  List<Row> rows() {
    return rows;
  }

  /** What stands before the names of elements. */
  String prefix() {
    return data.prefix();
  }

  /** A row by its number, without cells where it isn't there. */
  Row row(int number) {
    return rows.stream()
        .filter(row -> row.number() == number)
        .findFirst()
        .orElse(new Row(number, Optional.empty(), 0, List.of()));
  }

  /** The nearest cell above in a column that isn't blank; not that of the first row. */
  Optional<Cell> above(int row, int column) {
    return rows.stream()
        .filter(one -> one.number() < row && one.number() > 1)
        .sorted(Comparator.comparingInt(Row::number).reversed())
        .flatMap(one -> one.cells().stream().filter(cell -> cell.column() == column))
        .filter(cell -> !cell.isBlank())
        .findFirst();
  }

  /** Puts cells, as they are written, into a row that lacks them. */
  List<Splice> insert(Row row, Map<Integer, String> cells) {
    if (cells.isEmpty()) {
      return List.of();
    }
    String p = prefix();
    if (row.tag().isEmpty()) {
      String text = "<" + p + "row r=\"" + row.number() + "\">" + String.join("", cells.values());
      return List.of(inData(row.number(), text + "</" + p + "row>"));
    }
    XmlTag tag = row.tag().get();
    if (tag.kind() == XmlTag.Kind.EMPTY) {
      String opens = "<" + p + "row" + tag.attributes() + ">";
      String text = opens + String.join("", cells.values()) + "</" + p + "row>";
      return List.of(new Splice(tag.from(), tag.to(), text));
    }
    TreeMap<Integer, String> places = new TreeMap<>();
    cells.forEach(
        (column, text) -> {
          int at =
              row.cells().stream()
                  .filter(cell -> cell.column() > column)
                  .mapToInt(Cell::from)
                  .min()
                  .orElse(row.end());
          places.merge(at, text, String::concat);
        });
    return places.entrySet().stream()
        .map(place -> new Splice(place.getKey(), place.getKey(), place.getValue()))
        .toList();
  }

  private Splice inData(int number, String row) {
    Optional<Row> next = rows.stream().filter(one -> one.number() > number).findFirst();
    if (next.isPresent()) {
      int at = next.get().tag().orElseThrow().from();
      return new Splice(at, at, row);
    }
    String p = prefix();
    return data.kind() == XmlTag.Kind.EMPTY
        ? new Splice(data.from(), data.to(), "<" + p + "sheetData>" + row + "</" + p + "sheetData>")
        : new Splice(endOfData, endOfData, row);
  }
}
