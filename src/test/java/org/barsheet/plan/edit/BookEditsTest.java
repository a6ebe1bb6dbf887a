package org.barsheet.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.input.InputException;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changed cells of a plan in a workbook: those cells only, read back as asked. */
class BookEditsTest {

  private static final PlanPath PIN = PlanPath.ROOT.key("music").key("pins").item(0).key("bar");
  private static final PlanPath SCORE = PlanPath.ROOT.key("score");

  @TempDir private Path folder;
  private Path book = Path.of("");

  @BeforeEach
  void writeTheWholeSchemaAsBook() throws IOException {
    Path yaml = folder.resolve("plan.yaml");
    book = folder.resolve("plan.xlsx");
    try (InputStream in =
        BookEditsTest.class.getResourceAsStream("/org/barsheet/plan/whole-schema.yaml")) {
      Files.write(yaml, Objects.requireNonNull(in).readAllBytes());
    }
    Entry.Keyed tree = PlanSource.read(new PlanReading(yaml));
    Files.write(book, new BookWriter(tree, List.of("Celesta")).bytes());
  }

  private static PlanPath cue(int panel) {
    return PlanPath.ROOT.key("panels").item(panel).key("cue");
  }

  private void change(Consumer<XSSFWorkbook> change) throws IOException {
    try (XSSFWorkbook changed =
        new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(book)))) {
      change.accept(changed);
      try (OutputStream out = Files.newOutputStream(book)) {
        changed.write(out);
      }
    }
  }

  private static Map<String, byte[]> parts(byte[] zip) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        parts.put(entry.getName(), in.readAllBytes());
      }
    }
    return parts;
  }

  private byte[] edited(Edit... edits) {
    List<EditedFile> files = PlanEdits.of(book, List.of(edits));
    assertThat(files).hasSize(1);
    return files.get(0).after();
  }

  private void assertReadBack(byte[] after, Edit... edits) throws IOException {
    Path changed = Files.write(folder.resolve("changed.xlsx"), after);
    Entry read = PlanSource.read(new PlanReading(changed));
    for (Edit edit : edits) {
      assertThat(edit.at().textIn(read).orElseThrow().text()).isEqualTo(edit.now().orElseThrow());
    }
  }

  @Test
  void only_the_sheets_of_the_changed_cells_differ_and_parts_keep_their_order() throws IOException {
    change(it -> it.getSheet("Panels").getRow(1).createCell(30).setCellValue("mine"));
    Edit[] edits = {new Edit(cue(1), "glimmer 9 <&>"), new Edit(PIN, "37")};
    byte[] after = edited(edits);
    assertReadBack(after, edits);
    Map<String, byte[]> was = parts(Files.readAllBytes(book));
    Map<String, byte[]> is = parts(after);
    assertThat(List.copyOf(is.keySet())).isEqualTo(List.copyOf(was.keySet()));
    List<String> changed =
        was.keySet().stream().filter(name -> !Arrays.equals(was.get(name), is.get(name))).toList();
    assertThat(changed).hasSize(2).allMatch(name -> name.startsWith("xl/worksheets/sheet"));
  }

  @Test
  void every_other_cell_and_every_style_stays_for_other_readers() throws IOException {
    byte[] after = edited(new Edit(cue(1), "glimmer 9"), new Edit(SCORE, "new score.mid"));
    try (XSSFWorkbook was = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(book)));
        XSSFWorkbook is = new XSSFWorkbook(new ByteArrayInputStream(after))) {
      int differ = 0;
      for (Sheet sheet : was) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            Cell now =
                is.getSheet(sheet.getSheetName())
                    .getRow(row.getRowNum())
                    .getCell(cell.getColumnIndex());
            assertThat(now.getCellStyle().getIndex()).isEqualTo(cell.getCellStyle().getIndex());
            differ += now.toString().equals(cell.toString()) ? 0 : 1;
          }
        }
      }
      assertThat(differ).isEqualTo(2);
    }
  }

  @Test
  void a_bar_kept_as_a_number_stays_a_number() throws IOException {
    byte[] after = edited(new Edit(PIN, "37"));
    try (XSSFWorkbook is = new XSSFWorkbook(new ByteArrayInputStream(after))) {
      assertThat(is.getSheet("Pins").getRow(1).getCell(0).getNumericCellValue()).isEqualTo(37);
    }
  }

  @Test
  void a_formula_is_refused_because_it_would_be_lost() throws IOException {
    change(
        it -> {
          Cell cell = it.getSheet("Film").getRow(2).getCell(1);
          assertThat(it.getSheet("Film").getRow(2).getCell(0).getStringCellValue())
              .isEqualTo("score");
          cell.setCellFormula("\"a\"&\".mid\"");
          it.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
        });
    InputException refused =
        catchThrowableOfType(InputException.class, () -> edited(new Edit(SCORE, "b.mid")));
    assertThat(refused.problems())
        .singleElement()
        .asString()
        .contains("sheet Film, cell B3")
        .contains("formula");
  }

  @Test
  void cells_merged_over_rows_change_together_or_not_at_all() throws IOException {
    change(
        it -> {
          Sheet panels = it.getSheet("Panels");
          int last = panels.getLastRowNum();
          int column = 0;
          while (!panels.getRow(0).getCell(column).toString().equals("cut")) {
            column++;
          }
          for (int row = last + 1; row <= last + 2; row++) {
            panels.createRow(row).createCell(0).setCellValue("new-" + row);
            panels.getRow(row).createCell(column).setCellValue("bar 3");
          }
          panels.addMergedRegion(new CellRangeAddress(last + 1, last + 2, column, column));
        });
    int panels =
        ((Entry.Items)
                PlanSource.read(new PlanReading(book)).member("panels").orElseThrow().value())
            .items()
            .size();
    PlanPath cut = PlanPath.ROOT.key("panels");
    Edit[] alike = {
      new Edit(cut.item(panels - 2).key("cut"), "bar 4"),
      new Edit(cut.item(panels - 1).key("cut"), "bar 4")
    };
    assertReadBack(edited(alike), alike);
    Edit other = new Edit(cut.item(panels - 1).key("cut"), "bar 5");
    InputException refused =
        catchThrowableOfType(InputException.class, () -> edited(alike[0], other));
    assertThat(refused.problems()).singleElement().asString().contains("merged");
  }

  /** Prefixed names, single quotes, no references, comments: all allowed by XML and ECMA-376. */
  @Test
  void cells_are_found_however_another_program_wrote_the_xml() throws IOException {
    String sheet =
        """
        <?xml version='1.0'?>
        <!-- <x:c r="B2"/> -->
        <x:worksheet xmlns:x='http://schemas.openxmlformats.org/spreadsheetml/2006/main'>
        <x:sheetData><x:row>
        <x:c t='inlineStr'><x:is><x:t>setting</x:t></x:is></x:c>
        <x:c t='inlineStr'><x:is><x:t>value</x:t></x:is></x:c></x:row>
        <x:row r='4'><x:c t='inlineStr'><x:is><x:t>score</x:t></x:is></x:c>
        <x:c
           t = 'str' s = '0' ><x:v>a&gt;b.mid</x:v><!-- </x:c> --></x:c></x:row>
        </x:sheetData></x:worksheet>
        """;
    writeBook(sheet);
    Edit edit = new Edit(SCORE, "c & d.mid");
    byte[] after = edited(edit);
    assertReadBack(after, edit);
    String part = new String(parts(after).get("xl/worksheets/sheet1.xml"), StandardCharsets.UTF_8);
    String own = "<x:c\n   s = '0' t=\"inlineStr\"><x:is><x:t>c &amp; d.mid</x:t></x:is></x:c>";
    int from = sheet.indexOf("<x:c\n");
    int to = sheet.indexOf("</x:row>", from);
    assertThat(part).isEqualTo(sheet.substring(0, from) + own + sheet.substring(to));
  }

  private void writeBook(String film) throws IOException {
    String ns = "http://schemas.openxmlformats.org/";
    String rels = "<Relationships xmlns='" + ns + "package/2006/relationships'>";
    String kind = "<Relationship Id='r' Type='" + ns + "officeDocument/2006/relationships/";
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put(
        "_rels/.rels", rels + kind + "officeDocument' Target='xl/workbook.xml'/></Relationships>");
    parts.put(
        "xl/workbook.xml",
        "<workbook xmlns='"
            + ns
            + "spreadsheetml/2006/main' xmlns:r='"
            + ns
            + "officeDocument/2006/relationships'><sheets><sheet name='Film' sheetId='1' r:id='r'/>"
            + "</sheets></workbook>");
    parts.put(
        "xl/_rels/workbook.xml.rels",
        rels + kind + "worksheet' Target='worksheets/sheet1.xml'/></Relationships>");
    parts.put("xl/worksheets/sheet1.xml", film);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    Files.write(book, bytes.toByteArray());
  }
}
