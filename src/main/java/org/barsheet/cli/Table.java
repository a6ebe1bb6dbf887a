package org.barsheet.cli;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.barsheet.input.PlainText;

/** Rows under named columns, printed as aligned text, CSV (RFC 4180) or JSON. */
final class Table {

  private static final Gson JSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  /** Characters of a column that others follow. */
  private static final int WIDEST = 60;

  private final List<String> columns;
  private final List<List<Object>> rows = new ArrayList<>();

  Table(String... columns) {
    this.columns = List.of(columns);
  }

  /** Adds a row: a string, a number or a boolean for each column. */
  void add(Object... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException("a row of " + cells.length + " under " + columns);
    }
    rows.add(List.of(cells));
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  void print(As as, PrintWriter out) {
    switch (as) {
      case TEXT -> printText(out);
      case CSV -> printCsv(out);
      case JSON -> printJson(toJson(), out);
    }
    out.flush();
  }

  static void printJson(JsonElement element, PrintWriter out) {
    out.println(JSON.toJson(element));
    out.flush();
  }

  /** Numbers to the right, words to the left, two spaces between columns. */
  private void printText(PrintWriter out) {
    int[] widths = new int[columns.size()];
    for (int column = 0; column < widths.length; column++) {
      widths[column] = columns.get(column).length();
      for (List<Object> row : rows) {
        widths[column] = Math.max(widths[column], width(shown(row, column)));
      }
    }
    boolean[] numeric = new boolean[columns.size()];
    for (int column = 0; column < numeric.length; column++) {
      numeric[column] = isNumeric(column);
    }
    out.println(line(List.copyOf(columns), widths, numeric));
    rows.forEach(row -> out.println(line(row, widths, numeric)));
  }

  private static String line(List<?> cells, int[] widths, boolean[] numeric) {
    StringBuilder text = new StringBuilder();
    for (int column = 0; column < widths.length; column++) {
      String cell = shown(cells, column);
      String room = " ".repeat(Math.max(0, widths[column] - width(cell)));
      text.append(column == 0 ? "" : "  ").append(numeric[column] ? room + cell : cell + room);
    }
    return text.toString().stripTrailing();
  }

  /** A long name is cut short where columns follow, which it would push off the screen. */
  private static String shown(List<?> cells, int column) {
    String cell = cells.get(column).toString();
    return column + 1 < cells.size() ? PlainText.shortened(cell, WIDEST) : cell;
  }

  private boolean isNumeric(int column) {
    return !rows.isEmpty() && rows.stream().allMatch(row -> row.get(column) instanceof Number);
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }

  private void printCsv(PrintWriter out) {
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setHeader(columns.toArray(String[]::new))
            .setRecordSeparator("\n")
            .get();
    try {
      CSVPrinter printer = new CSVPrinter(out, format);
      for (List<Object> row : rows) {
        printer.printRecord(row);
      }
      printer.flush();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  JsonArray toJson() {
    JsonArray array = new JsonArray();
    for (List<Object> row : rows) {
      JsonObject object = new JsonObject();
      for (int column = 0; column < columns.size(); column++) {
        object.add(columns.get(column), value(row.get(column)));
      }
      array.add(object);
    }
    return array;
  }

  private static JsonElement value(Object cell) {
    if (cell instanceof Number number) {
      return new JsonPrimitive(number);
    }
    return cell instanceof Boolean truth
        ? new JsonPrimitive(truth)
        : new JsonPrimitive(cell.toString());
  }
}
