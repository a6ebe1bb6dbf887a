package org.barsheet.plan.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Where;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Collects the cells of one worksheet that are not blank. */
final class SheetCells extends DefaultHandler {

  /** Cells of one worksheet. */
  static final int MOST_CELLS = 200_000;

  /** Areas of merged cells of one worksheet. */
  static final int MOST_MERGED = 1000;

  private record Area(int firstRow, int lastRow, int column) {}

  private final String file;
  private final String sheet;
  private final BookReader.SharedTexts shared;
  private final CellFormats formats;
  private final TreeMap<Integer, TreeMap<Integer, Grid.Cell>> rows = new TreeMap<>();
  private final List<Area> merged = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private boolean inText;
  private boolean inline;
  private boolean pronounced;
  private int row = -1;
  private int column = -1;
  private String type = "";
  private int style;
  private int cells;

  SheetCells(String file, String sheet, BookReader.SharedTexts shared, CellFormats formats) {
    this.file = file;
    this.sheet = sheet;
    this.shared = shared;
    this.formats = formats;
  }

  @Override
  public void startElement(String uri, String name, String qualified, Attributes attributes) {
    switch (name) {
      case "row" -> beginRow(attributes);
      case "c" -> beginCell(attributes);
      case "rPh" -> pronounced = true;
      case "v" -> inText = !inline;
      case "t" -> inText = inline && !pronounced;
      case "mergeCell" -> merge(attributes.getValue("ref"));
      default -> {}
    }
  }

  private void beginRow(Attributes attributes) {
    int stated = CellPlace.whole(attributes.getValue("r"));
    row = stated > 0 ? stated - 1 : row + 1;
    column = -1;
  }

  private void beginCell(Attributes attributes) {
    String reference = attributes.getValue("r");
    int stated = reference == null ? -1 : CellPlace.columnOf(reference);
    column = stated >= 0 ? stated : column + 1;
    String given = attributes.getValue("t");
    type = given == null ? "n" : given;
    inline = type.equals("inlineStr");
    style = CellPlace.whole(attributes.getValue("s"));
    text.setLength(0);
  }

  @Override
  public void endElement(String uri, String name, String qualified) {
    switch (name) {
      case "v", "t" -> inText = false;
      case "rPh" -> pronounced = false;
      case "c" -> endCell();
      default -> {}
    }
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (inText) {
      text.append(characters, start, length);
    }
  }

  private void endCell() {
    Grid.Value value = value();
    if (value instanceof Grid.Written written && written.text().isBlank()) {
      return;
    }
    cells++;
    refuseOver(MOST_CELLS, cells, "cells");
    put(row, column, value, false);
    refuseOver(CsvTable.MOST_ROWS, rows.size(), "rows");
  }

  private void refuseOver(int most, int count, String what) {
    if (count > most) {
      throw new InputException(
          Problem.at(
              file,
              "sheet " + sheet,
              "the sheet has more than " + most + " " + what,
              "this is the limit for a plan; check the file"));
    }
  }

  private Grid.Value value() {
    String raw = text.toString();
    return switch (type) {
      case "s" -> new Grid.Written(shared.text(raw));
      case "b" -> new Grid.Written(raw.equals("1") ? "true" : "false");
      case "e" -> new Grid.Faulty(raw);
      case "d" -> new Grid.Moment(0, true, raw);
      case "n" -> number(raw);
      default -> new Grid.Written(raw);
    };
  }

  private Grid.Value number(String raw) {
    try {
      double number = Double.parseDouble(raw);
      return Double.isFinite(number) ? formats.value(number, style) : new Grid.Faulty(raw);
    } catch (NumberFormatException none) {
      return new Grid.Written(raw);
    }
  }

  private void put(int atRow, int atColumn, Grid.Value value, boolean covered) {
    CellPlace place = new CellPlace(sheet, atRow, atColumn);
    Grid.Cell cell = new Grid.Cell(atColumn, value, covered, new Where(file, place.toString()));
    rows.computeIfAbsent(atRow, none -> new TreeMap<>()).put(atColumn, cell);
  }

  private void merge(@Nullable String reference) {
    refuseOver(MOST_MERGED, merged.size() + 1, "areas of merged cells");
    String[] corners = reference == null ? new String[0] : reference.split(":", -1);
    if (corners.length == 2) {
      int column = CellPlace.columnOf(corners[0]);
      merged.add(new Area(CellPlace.rowOf(corners[0]), CellPlace.rowOf(corners[1]), column));
    }
  }

  /** The cells, those that an area of merged cells reaches from above filled in. */
  Grid grid() {
    merged.forEach(this::fill);
    List<Grid.Row> filled = new ArrayList<>();
    for (Map.Entry<Integer, TreeMap<Integer, Grid.Cell>> entry : rows.entrySet()) {
      Where where = new Where(file, "sheet " + sheet + ", row " + (entry.getKey() + 1));
      filled.add(new Grid.Row(where, List.copyOf(entry.getValue().values())));
    }
    return new Grid(new Where(file, "sheet " + sheet), filled);
  }

  private void fill(Area area) {
    TreeMap<Integer, Grid.Cell> first = rows.get(area.firstRow());
    Grid.Cell source = first == null ? null : first.get(area.column());
    if (source == null || area.lastRow() <= area.firstRow()) {
      return;
    }
    for (int covered : rows.subMap(area.firstRow(), false, area.lastRow(), true).keySet()) {
      put(covered, area.column(), source.value(), true);
    }
  }
}
