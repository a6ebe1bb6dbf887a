package org.barsheet.workbook.typed;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What people typed, on its way into a new workbook: notes which cells have a row there. */
public final class CarryingOver {

  private final TypedCells typed;

  /** What stands behind words that are older than a change of what they are about. */
  private static final String OLDER = " (older)";

  private final RowOrigins origins;
  private final Set<List<String>> found = new HashSet<>();

  public CarryingOver(TypedCells typed) {
    this(typed, RowOrigins.SAME);
  }

  /**
   * What was typed, on its way to rows that may have had other names.
   *
   * @param origins what rows were called before
   */
  public CarryingOver(TypedCells typed, RowOrigins origins) {
    this.typed = typed;
    this.origins = typed.isEmpty() ? RowOrigins.SAME : origins;
  }

  /** What was typed into one row: name of the column to text. */
  public Map<String, String> in(String sheet, String rowName) {
    Optional<RowOrigins.Origin> origin = origins.of(TypedCells.kind(sheet), rowName);
    if (origin.isEmpty()) {
      return Map.of();
    }
    Map<String, String> texts = typed.in(sheet, origin.get().rowName());
    return origin.get().changed() ? older(texts) : texts;
  }

  private static Map<String, String> older(Map<String, String> texts) {
    Map<String, String> older = new TreeMap<>();
    texts.forEach((column, text) -> older.put(column, text.endsWith(OLDER) ? text : text + OLDER));
    return older;
  }

  /** Notes that a typed cell has its row and its column in the new workbook. */
  public void foundAgain(String sheet, String rowName, String column) {
    origins
        .of(TypedCells.kind(sheet), rowName)
        .ifPresent(was -> found.add(List.of(TypedCells.kind(sheet), was.rowName(), column)));
  }

  public boolean isEmpty() {
    return typed.isEmpty();
  }

  public CarriedOver done() {
    return new CarriedOver(found.size(), typed.count() - found.size(), typed.isReadable());
  }
}
