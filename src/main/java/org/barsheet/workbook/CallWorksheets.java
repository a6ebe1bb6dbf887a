package org.barsheet.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.barsheet.calls.Call;
import org.barsheet.film.FilmSheet;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetNames;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.typed.TypedCells;

/**
 * Where everybody's call stands: a sheet each, as long as their tabs can be overlooked; of a larger
 * company all stand on one sheet, one below another, each on pages of its own.
 */
final class CallWorksheets {

  /** So many tabs can still be found (our own choice). */
  static final int MOST_SHEETS = 20;

  /** What the sheets' names begin with; typed cells are found again by it. */
  static final String WORD = TypedCells.CALL;

  /** The one sheet of a larger company. */
  static final String TOGETHER = TypedCells.CALLS;

  private final List<Call> calls;
  private final Map<String, Address> places = new HashMap<>();

  CallWorksheets(FilmSheet film) {
    this.calls = film.calls();
    if (calls.size() > MOST_SHEETS) {
      int row = SheetFrame.FIRST_ROW;
      for (Call call : calls) {
        places.put(call.performer().name(), new Address(TOGETHER, row, 0));
        row += CallWorksheet.rows(call) + 1;
      }
    } else {
      List<String> names =
          SheetNames.of(WORD, calls.stream().map(call -> call.performer().name()).toList());
      for (int i = 0; i < calls.size(); i++) {
        String name = calls.get(i).performer().name();
        places.put(name, new Address(names.get(i), SheetFrame.FIRST_ROW, 0));
      }
    }
  }

  /** Everybody, in the plan's order. */
  List<Call> all() {
    return calls;
  }

  /** Where a performer's call begins. */
  Address addressOf(String performer) {
    return Objects.requireNonNull(places.get(performer), "a performer of another plan");
  }

  /** Writes all of them. */
  void write(Book book) {
    if (calls.size() > MOST_SHEETS) {
      CallWorksheet sheet =
          new CallWorksheet(book, TOGETHER, SheetWords.count(calls.size(), "call"));
      calls.forEach(call -> sheet.writeBelow(call, addressOf(call.performer().name()).row()));
      sheet.finish();
      return;
    }
    for (Call call : calls) {
      Address place = addressOf(call.performer().name());
      CallWorksheet sheet = new CallWorksheet(book, place.sheet(), call.about());
      sheet.write(call, place.row());
      sheet.finish();
    }
  }
}
