package org.barsheet.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.input.InputException;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Panels, keys and settings put into a plan in a workbook and taken out: those cells only. */
class BookRowsTest {

  private static final PlanPath PANELS = PlanPath.ROOT.key("panels");
  private static final Path DEMO = Path.of("scores/lamplighters-quay.yaml");

  @TempDir private Path folder;
  private Path book = Path.of("");

  @BeforeEach
  void writeTheDemoAsBook() throws IOException {
    byte[] bytes = new BookWriter(PlanSource.read(new PlanReading(DEMO)), List.of()).bytes();
    book = Files.write(folder.resolve("plan.xlsx"), bytes);
  }

  private void change(Consumer<XSSFWorkbook> change) throws IOException {
    byte[] bytes = Files.readAllBytes(book);
    try (XSSFWorkbook changed = new XSSFWorkbook(new ByteArrayInputStream(bytes));
        ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      change.accept(changed);
      changed.write(out);
      Files.write(book, out.toByteArray());
    }
  }

  private byte[] edited(PlanEdit edit) {
    PlanTexts before = PlanTexts.read(book);
    List<EditedFile> files = before.with(edit).since(before);
    assertThat(files).hasSize(1);
    return files.get(0).after();
  }

  private static Map<String, byte[]> parts(byte[] bytes) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipFile zip =
        ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntriesInPhysicalOrder())) {
        try (var in = zip.getInputStream(entry)) {
          parts.put(entry.getName(), in.readAllBytes());
        }
      }
    }
    return parts;
  }

  /** Every cell that isn't blank, as POI reads it, by sheet and row and column; with its style. */
  private static Map<String, Map<Integer, Map<Integer, String>>> cells(byte[] bytes)
      throws IOException {
    Map<String, Map<Integer, Map<Integer, String>>> sheets = new LinkedHashMap<>();
    try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      for (Sheet sheet : read) {
        Map<Integer, Map<Integer, String>> rows = new TreeMap<>();
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (!cell.toString().isBlank()) {
              rows.computeIfAbsent(row.getRowNum(), none -> new TreeMap<>())
                  .put(cell.getColumnIndex(), cell + " / " + cell.getCellStyle().getIndex());
            }
          }
        }
        sheets.put(sheet.getSheetName(), rows);
      }
    }
    return sheets;
  }

  private void assertOnlyPartsDiffer(byte[] after, int most) throws IOException {
    Map<String, byte[]> was = parts(Files.readAllBytes(book));
    Map<String, byte[]> is = parts(after);
    assertThat(List.copyOf(is.keySet())).isEqualTo(List.copyOf(was.keySet()));
    List<String> differ =
        was.keySet().stream().filter(name -> !Arrays.equals(was.get(name), is.get(name))).toList();
    assertThat(differ)
        .hasSizeBetween(1, most)
        .allMatch(name -> name.startsWith("xl/worksheets/sheet"));
  }

  private static Map<Integer, Map<Integer, String>> rows(
      Map<String, Map<Integer, Map<Integer, String>>> cells, String sheet) {
    return Objects.requireNonNull(cells.get(sheet));
  }

  private List<Integer> differingRows(byte[] after, String sheet) throws IOException {
    Map<Integer, Map<Integer, String>> was = rows(cells(Files.readAllBytes(book)), sheet);
    Map<Integer, Map<Integer, String>> is = rows(cells(after), sheet);
    List<Integer> rows = new ArrayList<>();
    for (int row = 0; row < 100; row++) {
      Map<Integer, String> none = Map.of();
      if (!was.getOrDefault(row, none).equals(is.getOrDefault(row, none))) {
        rows.add(row);
      }
    }
    return rows;
  }

  @Test
  void a_new_key_is_one_more_cell_that_looks_as_those_above_it() throws IOException {
    PlanPath cut = PANELS.named("panel", "20").key("cut");
    byte[] after = edited(new TreeEdit.Put(cut, "on cue"));
    assertOnlyPartsDiffer(after, 1);
    assertThat(differingRows(after, "Panels")).hasSize(1);
  }

  @Test
  void a_panel_more_moves_those_below_down_and_changes_no_other_cell() throws IOException {
    PlanPath at = PANELS.item(5);
    byte[] after = edited(new TreeEdit.Insert(at, Values.keyed("panel", "5b", "cue", "bar 12")));
    assertOnlyPartsDiffer(after, 1);
    var was = cells(Files.readAllBytes(book));
    var is = cells(after);
    List<Map<Integer, String>> rows = new ArrayList<>(rows(is, "Panels").values());
    int fresh =
        rows.indexOf(
            rows.stream()
                .filter(row -> row.getOrDefault(0, "").startsWith("5b /"))
                .findFirst()
                .orElseThrow());
    rows.remove(fresh);
    assertThat(rows).isEqualTo(new ArrayList<>(rows(was, "Panels").values()));
    is.put("Panels", rows(was, "Panels"));
    assertThat(is).isEqualTo(was);
  }

  @Test
  void a_panel_less_leaves_its_row_blank_and_a_new_one_takes_that_row() throws IOException {
    byte[] before = Files.readAllBytes(book);
    byte[] without = edited(new TreeEdit.Remove(PANELS.named("panel", "5")));
    assertThat(differingRows(without, "Panels")).hasSize(1);
    int row = differingRows(without, "Panels").get(0);
    assertThat(rows(cells(without), "Panels")).doesNotContainKey(row);
    Files.write(book, without);
    byte[] again = edited(new TreeEdit.Insert(PANELS.item(4), Values.keyed("panel", "5")));
    assertThat(differingRows(again, "Panels")).containsExactly(row);
    assertThat(rows(cells(again), "Panels").keySet())
        .isEqualTo(rows(cells(before), "Panels").keySet());
  }

  @Test
  void a_setting_that_is_not_there_comes_behind_the_others() throws IOException {
    byte[] after = edited(new TreeEdit.Put(PlanPath.ROOT.key("music").key("tempo"), "played"));
    assertOnlyPartsDiffer(after, 1);
    assertThat(differingRows(after, "Music")).hasSize(1);
    byte[] title = edited(new TreeEdit.Put(PlanPath.ROOT.key("title"), "Quay & <sea>"));
    assertThat(differingRows(title, "Film")).hasSize(1);
  }

  @Test
  void a_column_that_is_missing_is_headed_behind_the_others() throws IOException {
    change(
        it -> {
          Row head = it.getSheet("Panels").getRow(0);
          for (Cell cell : head) {
            if (cell.toString().equals("locked")) {
              cell.setCellValue("my notes");
            }
          }
        });
    byte[] after = edited(new TreeEdit.Put(PANELS.named("panel", "3").key("locked"), "yes"));
    assertThat(differingRows(after, "Panels")).hasSize(2).contains(0);
  }

  @Test
  void rows_that_a_formula_a_note_or_merged_cells_hold_do_not_move() throws IOException {
    TreeEdit insert = new TreeEdit.Insert(PANELS.item(2), Values.keyed("panel", "2b"));
    change(it -> it.getSheet("Panels").getRow(30).createCell(40).setCellFormula("1+1"));
    InputException refused = catchThrowableOfType(InputException.class, () -> edited(insert));
    assertThat(refused.problems()).singleElement().asString().contains("formulas");
    writeTheDemoAsBook();
    change(
        it -> {
          Sheet panels = it.getSheet("Panels");
          var anchor = it.getCreationHelper().createClientAnchor();
          var note = panels.createDrawingPatriarch().createCellComment(anchor);
          note.setString(it.getCreationHelper().createRichTextString("mine"));
          panels.getRow(20).getCell(0).setCellComment(note);
        });
    refused = catchThrowableOfType(InputException.class, () -> edited(insert));
    assertThat(refused.problems()).singleElement().asString().contains("notes hold these rows");
  }

  @Test
  void areas_below_new_rows_move_with_them() throws IOException {
    change(
        it -> {
          Sheet panels = it.getSheet("Panels");
          panels.addMergedRegion(new CellRangeAddress(60, 62, 40, 41));
        });
    byte[] after = edited(new TreeEdit.Insert(PANELS.item(2), Values.keyed("panel", "2b")));
    try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(after))) {
      assertThat(read.getSheet("Panels").getMergedRegions())
          .containsExactly(new CellRangeAddress(61, 63, 40, 41));
    }
  }

  @Test
  void random_edits_change_their_sheet_alone_and_are_read_back() throws IOException {
    Random random = new Random(3);
    for (int i = 0; i < 12; i++) {
      PlanPath panel = PANELS.named("panel", "" + (1 + random.nextInt(26)));
      PlanEdit edit =
          switch (random.nextInt(5)) {
            case 0 -> new TreeEdit.Put(panel.key("action"), "Action " + i);
            case 1 ->
                new TreeEdit.Put(
                    panel.key("field"),
                    Values.keyed("left", "1", "top", "2.5", "width", "" + (5 + i)));
            case 2 ->
                new TreeEdit.Insert(
                    panel.key("reveals").item(0),
                    Values.keyed("opening", "hatch", "moves", "closes"));
            case 3 ->
                new TreeEdit.Put(
                    PlanPath.ROOT.key("openings").key("hatch").key("left"), "" + (3 + i));
            default ->
                new TreeEdit.Rename(PlanPath.ROOT.key("performers").key("flute"), "flute-" + i);
          };
      assertOnlyPartsDiffer(edited(edit), 1);
    }
  }
}
