package org.barsheet.plan.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.barsheet.clock.FrameRate;
import org.barsheet.plan.WordChoice;
import org.barsheet.plan.read.PanelSection;

/** Lists to choose a cell's content from. Other content may still be typed. */
final class Choices {

  /** Characters that a list written into a validation may have (ECMA-376 Part 1, 18.3.1.33). */
  private static final int LONGEST_LIST = 255;

  private static final List<String> RATES =
      FrameRate.ALL.stream().map(FrameRate::toString).toList();
  private static final List<String> SIDES = List.of("left", "right", "top", "bottom");
  private static final List<String> YES_OR_NO = List.of("yes", "no");

  private static final Map<String, List<String>> WORDS =
      Map.ofEntries(
          Map.entry("frame-rate", RATES),
          Map.entry("clip-rate", RATES),
          Map.entry("shown", WordChoice.SHOWN.words()),
          Map.entry("paper", List.of("A4", "letter")),
          Map.entry("music-from", List.of("start of file", "first note")),
          Map.entry("tempo", List.of("auto", "written", "played")),
          Map.entry("pickup", List.of("auto", "yes", "no")),
          Map.entry("accent", List.of("first", "last")),
          Map.entry("match", List.of("exact", "transposed", "tonal", "free")),
          Map.entry("hinge", SIDES),
          Map.entry("slides", SIDES),
          Map.entry("moves", List.of("opens", "closes")),
          Map.entry("slow", PanelSection.SLOW.words()),
          Map.entry("even-in", List.of("angle", "opening")),
          Map.entry("lands", List.of("fully open", "half open", "first gap")),
          Map.entry("lands-on", List.of("accent", "notes")),
          Map.entry("photographed", YES_OR_NO),
          Map.entry("locked", YES_OR_NO));

  private static final String NAMES = "!$A$2:$A$500";

  /** Columns that name what stands in the first column of another sheet. */
  private static final Map<String, String> NAMED =
      Map.of(
          "model", "Models" + NAMES,
          "opening", "Openings" + NAMES,
          "seen-in", "Openings" + NAMES,
          "performer", "Performers" + NAMES);

  private final List<String> parts;

  Choices(List<String> parts) {
    this.parts = parts;
  }

  /** Offers choices for the cells of a column, where its heading has any. */
  void offer(Sheet sheet, String heading, int firstRow, int lastRow, int column) {
    boolean namesItself = column == 0;
    DataValidationHelper helper = sheet.getDataValidationHelper();
    List<String> words = words(sheet, heading);
    DataValidationConstraint list;
    if (!words.isEmpty()) {
      list = helper.createExplicitListConstraint(words.toArray(new String[0]));
    } else if (NAMED.containsKey(heading) && !namesItself) {
      list = helper.createFormulaListConstraint(NAMED.get(heading));
    } else {
      return;
    }
    DataValidation validation =
        helper.createValidation(list, new CellRangeAddressList(firstRow, lastRow, column, column));
    validation.setShowErrorBox(false);
    // Turned round in the library for this file format: true shows the arrow.
    validation.setSuppressDropDownArrow(true);
    sheet.addValidationData(validation);
  }

  private List<String> words(Sheet sheet, String heading) {
    boolean shown = heading.equals("photographs") && sheet.getSheetName().equals("Film");
    List<String> words =
        shown
            ? WordChoice.SHOWN.words()
            : heading.equals("part") ? parts : WORDS.getOrDefault(heading, List.of());
    List<String> fitting = new ArrayList<>();
    int length = 0;
    for (String word : words) {
      length += word.length() + 1;
      if (length <= LONGEST_LIST && !word.contains(",")) {
        fitting.add(word);
      }
    }
    return fitting;
  }
}
