package org.barsheet.plan.table;

import java.util.Locale;
import org.barsheet.plan.Measures;
import org.barsheet.plan.source.Problems;

/** What a cell says, as a person would have typed it into a text file. */
final class CellTexts {

  private static final long SECONDS_A_DAY = 86_400;

  private final Problems problems;

  CellTexts(Problems problems) {
    this.problems = problems;
  }

  /** The text; what a spreadsheet program made of it by mistake is reported and counts as "". */
  String of(Grid.Cell cell, TableColumn.TimeOfDay time) {
    if (cell.value() instanceof Grid.Written written) {
      return written.text();
    }
    if (cell.value() instanceof Grid.Moment moment) {
      return ofMoment(cell, moment, time);
    }
    String shown = ((Grid.Faulty) cell.value()).shown();
    problems.add(cell.where(), "the cell shows " + shown, "type the text itself, not a formula");
    return "";
  }

  private String ofMoment(Grid.Cell cell, Grid.Moment moment, TableColumn.TimeOfDay time) {
    long milliseconds = Math.round(moment.days() * SECONDS_A_DAY * 1000);
    if (time == TableColumn.TimeOfDay.DAY && moment.date()) {
      return moment.shown();
    }
    if (time == TableColumn.TimeOfDay.SECONDS && !moment.date()) {
      return Measures.plain(milliseconds / 1000.0) + " s";
    }
    boolean wholeSeconds = milliseconds % 1000 == 0;
    if (time == TableColumn.TimeOfDay.TIMECODE && !moment.date() && wholeSeconds) {
      return timecode(milliseconds / 1000);
    }
    String kind = moment.date() ? "date" : "time";
    problems.add(
        cell.where(),
        "the spreadsheet program turned this cell into a " + kind + ": " + moment.shown(),
        "set the cell's format to text and type it again");
    return "";
  }

  private static String timecode(long seconds) {
    return String.format(
        Locale.ROOT, "%02d:%02d:%02d:00", seconds / 3600, seconds / 60 % 60, seconds % 60);
  }
}
