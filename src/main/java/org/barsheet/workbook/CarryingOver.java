package org.barsheet.workbook;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What people typed, on its way into a new workbook: notes which cells have a row there. */
final class CarryingOver {

  private final TypedCells typed;
  private final Set<List<String>> found = new HashSet<>();

  CarryingOver(TypedCells typed) {
    this.typed = typed;
  }

  /** What was typed into one row: heading of the column to text. */
  Map<String, String> in(String sheet, String rowName) {
    return typed.in(sheet, rowName);
  }

  /** Notes that a typed cell has its row and its column in the new workbook. */
  void foundAgain(String sheet, String rowName, String heading) {
    found.add(List.of(TypedCells.kind(sheet), rowName, heading));
  }

  boolean isEmpty() {
    return typed.isEmpty();
  }

  CarriedOver done() {
    return new CarriedOver(found.size(), typed.count() - found.size());
  }
}
