package org.barsheet.plan;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.barsheet.input.InputException;
import org.barsheet.plan.read.PlanReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks made to do harm are refused by a limit, and the limit is named. */
@Timeout(20)
class HostileBooksTest {

  private static final String MAIN =
      "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
          + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"";
  private static final String RELATIONS =
      "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">";
  private static final String KIND =
      "Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/";

  @TempDir private Path folder;

  /** Writes the sheet's XML bit by bit. */
  private interface SheetText {
    void writeTo(OutputStream out) throws IOException;
  }

  private Path book(SheetText sheet) throws IOException {
    Path file = folder.resolve("plan.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      part(
          zip,
          "_rels/.rels",
          RELATIONS
              + "<Relationship Id=\"a\" "
              + KIND
              + "officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
      part(
          zip,
          "xl/workbook.xml",
          "<workbook " + MAIN + "><sheets><sheet name=\"Panels\" r:id=\"b\"/></sheets></workbook>");
      part(
          zip,
          "xl/_rels/workbook.xml.rels",
          RELATIONS
              + "<Relationship Id=\"b\" "
              + KIND
              + "worksheet\" Target=\"worksheets/sheet1.xml\"/></Relationships>");
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      sheet.writeTo(zip);
    }
    return file;
  }

  private static void part(ZipOutputStream zip, String name, String text) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(UTF_8));
  }

  private String told(SheetText sheet) throws IOException {
    Path file = book(sheet);
    InputException wrong = catchThrowableOfType(InputException.class, () -> PlanReader.read(file));
    assertThat(wrong).isNotNull();
    return wrong.problems().get(0).toString();
  }

  private static SheetText repeated(String before, String again, int times) {
    byte[] bytes = again.getBytes(UTF_8);
    return out -> {
      out.write(("<worksheet " + MAIN + "><sheetData>" + before).getBytes(UTF_8));
      for (int i = 0; i < times; i++) {
        out.write(bytes);
      }
      out.write("</sheetData></worksheet>".getBytes(UTF_8));
    };
  }

  private static String cell(String text) {
    return "<row><c t=\"inlineStr\"><is><t>" + text + "</t></is></c></row>";
  }

  @Test
  void an_honest_book_made_this_way_is_read() throws IOException {
    assertThat(told(repeated(cell("panel"), cell("1"), 1))).contains("the plan has no 'title'");
  }

  @Test
  void an_archive_that_unpacks_to_far_more_is_refused() throws IOException {
    assertThat(told(repeated("", " ".repeat(1_000_000), 300)))
        .contains("the workbook unpacks to more than 32 MB");
    assertThat(Files.size(folder.resolve("plan.xlsx"))).isLessThan(1_000_000);
  }

  @Test
  void a_cell_of_a_hundred_megabytes_is_refused() throws IOException {
    String open = "<row><c t=\"inlineStr\"><is><t>";
    assertThat(told(repeated(open, "x".repeat(1_000_000), 100)))
        .contains("the workbook unpacks to more than 32 MB");
  }

  @Test
  void a_million_rows_are_refused() throws IOException {
    assertThat(told(repeated(cell("panel"), "<row><c><v>1</v></c></row>", 1_000_000)))
        .contains("sheet Panels: the sheet has more than 20000 rows");
  }

  @Test
  void very_many_cells_and_merged_areas_are_refused() throws IOException {
    assertThat(told(repeated("<row>", "<c><v>1</v></c>", 300_000)))
        .contains("the sheet has more than 200000 cells");
    assertThat(told(repeated("", "<mergeCell ref=\"A1:A1048576\"/>", 300_000)))
        .contains("the sheet has more than 1000 areas of merged cells");
  }

  @Test
  void a_document_type_and_what_it_would_include_are_refused() throws IOException {
    String bomb =
        "<!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">"
            + "<!ENTITY c SYSTEM \"file:///etc/passwd\">]><worksheet>&b;&c;</worksheet>";
    assertThat(told(out -> out.write(bomb.getBytes(UTF_8))))
        .contains("the part xl/worksheets/sheet1.xml of the workbook is damaged");
  }

  @Test
  void other_files_are_told_for_what_they_are() throws IOException {
    Path file = folder.resolve("plan.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      part(zip, "content.xml", "<office/>");
    }
    assertThat(wrong(file)).contains("this is not an .xlsx workbook");
    Files.write(file, new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 1, 2});
    assertThat(wrong(file)).contains("this is an .xls workbook, or one with a password");
    Files.write(file, new byte[] {'P', 'K', 3, 4, 1, 2});
    assertThat(wrong(file)).contains("this .xlsx workbook is incomplete");
  }

  private static String wrong(Path file) {
    InputException wrong = catchThrowableOfType(InputException.class, () -> PlanReader.read(file));
    return wrong == null ? "" : wrong.problems().get(0).toString();
  }
}
