package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.table.CellPlace;

/** Changes cells in the XML of one worksheet (Office Open XML, ECMA-376 Part 1, 18.3.1.4). */
final class SheetEdits {

  private final String file;
  private final String sheet;
  private final List<XmlTag> tags;

  /** Each cell's tags, from the one that opens it to the one that closes it. */
  private final Map<CellPlace, List<XmlTag>> cells = new HashMap<>();

  private SheetEdits(String file, String sheet, String xml) {
    this.file = file;
    this.sheet = sheet;
    this.tags = XmlTag.all(xml);
    findCells();
  }

  /**
   * What to change.
   *
   * @param edits of cells that are not blank
   * @throws InputException if a cell holds a formula, or counts for several rows
   */
  static List<Splice> of(String file, String sheet, String xml, List<CellEdit> edits) {
    SheetEdits changes = new SheetEdits(file, sheet, xml);
    Map<CellPlace, List<CellEdit>> byCell = new LinkedHashMap<>();
    for (CellEdit edit : edits) {
      CellPlace place = changes.written(CellPlace.of(edit.position()).orElseThrow());
      byCell.computeIfAbsent(place, none -> new ArrayList<>()).add(edit);
    }
    return byCell.entrySet().stream()
        .map(cell -> changes.splice(cell.getKey(), cell.getValue()))
        .toList();
  }

  private void findCells() {
    int row = -1;
    int column = -1;
    for (int i = 0; i < tags.size(); i++) {
      XmlTag tag = tags.get(i);
      boolean opens = tag.kind() != XmlTag.Kind.CLOSES;
      if (opens && tag.name().equals("row")) {
        int stated = CellPlace.whole(tag.attribute("r"));
        row = stated > 0 ? stated - 1 : row + 1;
        column = -1;
      } else if (opens && tag.name().equals("c")) {
        int stated = CellPlace.columnOf(tag.attribute("r"));
        column = stated >= 0 ? stated : column + 1;
        cells.put(new CellPlace(sheet, row, column), tags.subList(i, endOfCell(i) + 1));
      }
    }
  }

  private int endOfCell(int opens) {
    return tags.get(opens).kind() == XmlTag.Kind.EMPTY
        ? opens
        : IntStream.range(opens, tags.size())
            .filter(i -> tags.get(i).kind() == XmlTag.Kind.CLOSES)
            .filter(i -> tags.get(i).name().equals("c"))
            .findFirst()
            .orElse(opens);
  }

  /** The cell itself, or the one above that is merged with it and holds its value. */
  private CellPlace written(CellPlace asked) {
    for (XmlTag tag : tags) {
      String[] corners = tag.attribute("ref").split(":", -1);
      if (tag.name().equals("mergeCell") && corners.length == 2) {
        int top = CellPlace.rowOf(corners[0]);
        boolean within =
            CellPlace.columnOf(corners[0]) == asked.column()
                && top < asked.row()
                && CellPlace.rowOf(corners[1]) >= asked.row();
        if (within) {
          return new CellPlace(sheet, top, asked.column());
        }
      }
    }
    return asked;
  }

  private Splice splice(CellPlace place, List<CellEdit> edits) {
    List<XmlTag> cell = cells.getOrDefault(place, List.of());
    if (edits.stream().map(CellEdit::now).distinct().count() > 1) {
      throw refuse(place, "this merged cell covers rows that would differ", "unmerge the cells");
    }
    if (cell.isEmpty() || cell.stream().anyMatch(tag -> tag.name().equals("f"))) {
      throw refuse(place, "this cell holds a formula", "type the text itself");
    }
    XmlTag opens = cell.get(0);
    String type = opens.attribute("t");
    boolean number = type.isEmpty() || type.equals("n");
    String written =
        number && isWhole(edits.get(0).before()) && isWhole(edits.get(0).now())
            ? asNumber(opens, edits.get(0).now())
            : asText(opens, edits.get(0).now());
    return new Splice(opens.from(), cell.get(cell.size() - 1).to(), written);
  }

  static boolean isWhole(String text) {
    return text.matches("-?(0|[1-9][0-9]{0,8})");
  }

  private static String asNumber(XmlTag cell, String number) {
    String p = cell.prefix();
    String name = p + cell.name();
    String value = "<" + p + "v>" + number + "</" + p + "v>";
    return "<" + name + cell.attributes() + ">" + value + "</" + name + ">";
  }

  /** A text within the cell, so that the texts that cells share stay as they are. */
  private static String asText(XmlTag cell, String text) {
    String p = cell.prefix();
    String name = p + cell.name();
    String attributes = cell.attributes().replaceAll("\\st\\s*=\\s*(\"[^\"]*\"|'[^']*')", "");
    String space = text.equals(text.strip()) ? "" : " xml:space=\"preserve\"";
    String value = "<" + p + "t" + space + ">" + escaped(text) + "</" + p + "t>";
    String inline = "<" + p + "is>" + value + "</" + p + "is>";
    return "<" + name + attributes + " t=\"inlineStr\">" + inline + "</" + name + ">";
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private InputException refuse(CellPlace place, String sentence, String remedy) {
    return new InputException(Problem.at(file, place.toString(), sentence, remedy));
  }
}
