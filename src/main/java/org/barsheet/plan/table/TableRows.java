package org.barsheet.plan.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.plan.source.Entry;

/** The rows of a worksheet that hold what entries say: the way back from {@link TableReader}. */
public final class TableRows {

  private final SheetLayout layout;

  public TableRows(SheetLayout layout) {
    this.layout = layout;
  }

  /** Texts by heading, a map a row. */
  public List<Map<String, String>> of(Entry.Keyed plan) {
    return things(plan).stream().flatMap(List::stream).toList();
  }

  /** The same, the rows of each thing together. */
  List<List<Map<String, String>>> things(Entry.Keyed plan) {
    List<List<Map<String, String>>> rows = new ArrayList<>();
    Entry things = at(plan, layout.root()).orElse(new Entry.Items(List.of(), plan.where()));
    if (things instanceof Entry.Keyed named) {
      for (Entry.Member member : named.members()) {
        rows.add(rowsOf(member.key(), keyed(member.value())));
      }
    } else if (things instanceof Entry.Items items) {
      for (Entry item : items.items()) {
        Entry.Keyed thing = keyed(item);
        rows.add(rowsOf(text(thing, List.of(layout.name())), thing));
      }
    }
    return rows;
  }

  private static Entry.Keyed keyed(Entry entry) {
    return entry instanceof Entry.Keyed keyed ? keyed : new Entry.Keyed(List.of(), entry.where());
  }

  private List<Map<String, String>> rowsOf(String name, Entry.Keyed thing) {
    List<Map<String, String>> rows = new ArrayList<>();
    Map<String, String> first = rowAt(rows, 0);
    first.put(layout.name(), name);
    for (TableColumn column : layout.columns()) {
      if (!column.path().isEmpty()) {
        first.put(column.heading(), text(thing, column.path()));
      }
      if (!column.group().isEmpty()) {
        addGroup(rows, column, thing);
      }
    }
    rows.forEach(row -> row.values().removeIf(String::isEmpty));
    return rows;
  }

  /** Items of a group stand from the first row on, unless that row's cells say something else. */
  private static void addGroup(
      List<Map<String, String>> rows, TableColumn column, Entry.Keyed thing) {
    int row = column.path().isEmpty() ? 0 : 1;
    Entry items =
        at(thing, List.of(column.group())).orElse(new Entry.Items(List.of(), thing.where()));
    for (Entry item : items instanceof Entry.Items list ? list.items() : List.of(items)) {
      rowAt(rows, row).put(column.heading(), text(keyed(item), List.of(column.groupKey())));
      row++;
    }
  }

  private static Map<String, String> rowAt(List<Map<String, String>> rows, int row) {
    while (rows.size() <= row) {
      rows.add(new LinkedHashMap<>());
    }
    return rows.get(row);
  }

  private static Optional<Entry> at(Entry.Keyed from, List<String> path) {
    Entry entry = from;
    for (String key : path) {
      Optional<Entry> next = keyed(entry).member(key).map(Entry.Member::value);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      entry = next.get();
    }
    return Optional.of(entry);
  }

  /** What stands at a path, as the text of one cell; "" where nothing does. */
  static String text(Entry.Keyed from, List<String> path) {
    return at(from, path).map(TableRows::cell).orElse("");
  }

  /** The same of a setting; "" where what stands there has a table of its own. */
  public static String setting(Entry.Keyed from, List<String> path) {
    boolean table = at(from, path).filter(Entry.Keyed.class::isInstance).isPresent();
    return table ? "" : text(from, path);
  }

  /**
   * A plan as a table would say it: a list of texts and a field of the camera as one text each,
   * nothing blank.
   */
  public static Entry inCells(Entry entry) {
    if (entry instanceof Entry.Items items) {
      boolean texts = items.items().stream().allMatch(Entry.Text.class::isInstance);
      return texts
          ? new Entry.Text(cell(items), items.where())
          : new Entry.Items(items.items().stream().map(TableRows::inCells).toList(), items.where());
    }
    if (entry instanceof Entry.Keyed table) {
      List<Entry.Member> members = new ArrayList<>();
      for (Entry.Member member : table.members()) {
        boolean field = member.key().equals("field") && member.value() instanceof Entry.Keyed;
        Entry value =
            field ? new Entry.Text(cell(member.value()), member.where()) : inCells(member.value());
        boolean empty =
            value.isBlank() || (value instanceof Entry.Keyed none && none.members().isEmpty());
        if (!empty) {
          members.add(new Entry.Member(member.key(), member.where(), value));
        }
      }
      return new Entry.Keyed(members, table.where());
    }
    return entry;
  }

  private static String cell(Entry entry) {
    if (entry instanceof Entry.Text text) {
      return text.text();
    }
    if (entry instanceof Entry.Items items) {
      return items.items().stream().map(TableRows::cell).collect(Collectors.joining("; "));
    }
    return field((Entry.Keyed) entry);
  }

  /** A field in keys as a field in words: {@code whole to left 1 top 4.6 width 6 slow both}. */
  private static String field(Entry.Keyed field) {
    StringBuilder words = new StringBuilder();
    for (Entry.Member member : field.members()) {
      boolean from = member.key().equals("from");
      words.append(words.isEmpty() || from ? "" : " ");
      words.append(from ? "" : member.key() + " ").append(cell(member.value()));
    }
    return words.toString();
  }
}
