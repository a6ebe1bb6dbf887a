package org.barsheet.workbook.typed;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What people typed, on its way into a new workbook: notes which cells have a row there. */
public final class CarryingOver {

  private final TypedCells typed;
  private final Set<List<String>> found = new HashSet<>();

  public CarryingOver(TypedCells typed) {
    this.typed = typed;
  }

  /** What was typed into one row: name of the column to text. */
  public Map<String, String> in(String sheet, String rowName) {
    return typed.in(sheet, rowName);
  }

  /** Notes that a typed cell has its row and its column in the new workbook. */
  public void foundAgain(String sheet, String rowName, String column) {
    found.add(List.of(TypedCells.kind(sheet), rowName, column));
  }

  public boolean isEmpty() {
    return typed.isEmpty();
  }

  public CarriedOver done() {
    return new CarriedOver(found.size(), typed.count() - found.size(), typed.isReadable());
  }
}
