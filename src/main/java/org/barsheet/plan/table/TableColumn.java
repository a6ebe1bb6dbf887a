package org.barsheet.plan.table;

import java.util.List;
import org.barsheet.plan.source.PlanKey;

/**
 * A column of a table, or a row of a sheet of settings, and what of the plan stands in it.
 *
 * @param heading what is written above it
 * @param path keys from the row's own thing to the value; empty where it only fills {@code group}
 * @param group the list that further rows of the same thing add to, or ""
 * @param groupKey the key in that list's item, or ""
 * @param key what it means
 * @param time what a cell that holds a time of day means
 */
public record TableColumn(
    String heading, List<String> path, String group, String groupKey, PlanKey key, TimeOfDay time) {

  /** What a cell means that a spreadsheet program keeps as a time or a date. */
  enum TimeOfDay {
    /** It should have been text. */
    MISTAKEN,
    /** So many seconds. */
    SECONDS,
    /** A timecode without its frames. */
    TIMECODE,
    /** A day. */
    DAY
  }

  public TableColumn {
    path = List.copyOf(path);
  }

  /** A value of the row's own thing. */
  static TableColumn own(PlanKey key, String... path) {
    return new TableColumn(key.name(), List.of(path), "", "", key, TimeOfDay.MISTAKEN);
  }

  /** A value of an item of a list inside the row's thing. */
  static TableColumn inGroup(String group, PlanKey key) {
    return new TableColumn(key.name(), List.of(), group, key.name(), key, TimeOfDay.MISTAKEN);
  }

  TableColumn headed(String otherHeading) {
    return new TableColumn(otherHeading, path, group, groupKey, key, time);
  }

  TableColumn alsoInGroup(String otherGroup) {
    return new TableColumn(heading, path, otherGroup, key.name(), key, time);
  }

  TableColumn withTime(TimeOfDay meaning) {
    return new TableColumn(heading, path, group, groupKey, key, meaning);
  }
}
