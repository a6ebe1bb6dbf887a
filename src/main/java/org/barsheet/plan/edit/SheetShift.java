package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.table.CellPlace;

/** Moves the rows of a worksheet down (Office Open XML, ECMA-376 Part 1, 18.3.1). */
final class SheetShift {

  /** Elements that name cells by their rows, and the attribute that does. */
  private static final Set<String> WITH_REF =
      Set.of("mergeCell", "dimension", "autoFilter", "hyperlink", "ignoredError");

  private static final Set<String> WITH_SQREF =
      Set.of(
          "dataValidation", "conditionalFormatting", "selection", "ignoredError", "protectedRange");

  /** Elements whose rows are named in other places too. */
  private static final Set<String> HELD = Set.of("f", "tablePart", "sortState", "sqref", "brk");

  private static final Pattern CELL = Pattern.compile("([A-Z]{1,3})([0-9]+)");

  private SheetShift() {}

  /** Whether cells merged over several rows reach into some. */
  static boolean isMergedOver(String xml, int first, int count) {
    for (XmlTag tag : XmlTag.all(xml)) {
      String[] corners = tag.attribute("ref").split(":", -1);
      if (tag.name().equals("mergeCell") && corners.length == 2) {
        int top = CellPlace.rowOf(corners[0]) + 1;
        int bottom = CellPlace.rowOf(corners[1]) + 1;
        if (count > 0 && top < first + count && bottom >= first) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Makes room for rows.
   *
   * @param first number of the first row that moves, from 1
   * @throws InputException if something in the worksheet holds its rows in their places
   */
  static String down(String file, String sheet, String xml, int first, int count) {
    List<Splice> splices = new ArrayList<>();
    for (XmlTag tag : XmlTag.all(xml)) {
      if (HELD.contains(tag.name())) {
        throw held(file, sheet, first);
      }
      String name = tag.name();
      if (tag.kind() != XmlTag.Kind.CLOSES && name.equals("row")) {
        attribute(tag, "r", splices, value -> "" + moved(Integer.parseInt(value), first, count));
      } else if (tag.kind() != XmlTag.Kind.CLOSES && name.equals("c")) {
        attribute(tag, "r", splices, value -> cells(value, first, count));
      } else {
        if (WITH_REF.contains(name)) {
          attribute(tag, "ref", splices, value -> cells(value, first, count));
        }
        if (WITH_SQREF.contains(name)) {
          attribute(tag, "sqref", splices, value -> cells(value, first, count));
        }
      }
    }
    return Splice.apply(xml, splices);
  }

  static InputException held(String file, String sheet, int first) {
    return refuse(
        file,
        "sheet " + sheet + ", row " + first,
        "formulas, drawings or notes hold these rows where they are",
        "insert a blank row there, then try again");
  }

  private static void attribute(
      XmlTag tag, String name, List<Splice> splices, UnaryOperator<String> change) {
    String value = tag.attribute(name);
    String now = value.isEmpty() ? value : change.apply(value);
    if (!now.equals(value)) {
      int start = tag.from() + 1 + tag.prefix().length() + tag.name().length();
      Matcher found = Pattern.compile("\\s" + name + "\\s*=\\s*[\"']").matcher(tag.attributes());
      found.find();
      int from = start + found.end();
      splices.add(new Splice(from, from + value.length(), now));
    }
  }

  private static int moved(int row, int first, int count) {
    return row >= first ? row + count : row;
  }

  private static String cells(String references, int first, int count) {
    return CELL.matcher(references)
        .replaceAll(cell -> cell.group(1) + moved(Integer.parseInt(cell.group(2)), first, count));
  }

  static InputException refuse(String file, String position, String sentence, String remedy) {
    return new InputException(Problem.at(file, position, sentence, remedy));
  }
}
