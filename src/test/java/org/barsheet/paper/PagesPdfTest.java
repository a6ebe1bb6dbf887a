package org.barsheet.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.outside.OutsideProgram;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The PDF beside the drawings: same pages, same sizes, same bytes every time. */
class PagesPdfTest {

  private static final FilmSheet DEMO = DemoFilm.sheet();
  private static final List<PaperPage> PAGES = PaperSheets.cutting(DEMO);

  static byte[] pdf(List<PaperPage> pages) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PagesPdf.write("Lamplighters' Quay: cutting sheets", pages, out);
    return out.toByteArray();
  }

  @Test
  void the_same_pages_give_the_same_bytes() throws IOException {
    assertThat(pdf(PAGES)).isEqualTo(pdf(PaperSheets.cutting(DEMO)));
  }

  @Test
  void every_drawing_is_a_page_with_its_words_in_embedded_letters() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(PAGES))) {
      assertThat(document.getNumberOfPages()).isEqualTo(PAGES.size());
      String text = new PDFTextStripper().getText(document);
      NeededPiece.of(DEMO).forEach(needed -> assertThat(text).contains(needed.name()));
      for (var page : document.getPages()) {
        for (var font : page.getResources().getFontNames()) {
          assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
        }
      }
    }
  }

  /** The bar is black from end to end, on a page painted with 10 dots to the millimeter. */
  @Test
  void the_check_bar_is_100_mm_long_on_the_painted_page() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(PAGES.subList(0, 1)))) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 254);
      assertThat(page.getWidth()).isCloseTo(2100, within(1));
      int row = 2970 - 360 + 90;
      int dark = 0;
      for (int x = 0; x < page.getWidth(); x++) {
        dark += (page.getRGB(x, row) & 0xFF) < 128 ? 1 : 0;
      }
      assertThat(dark).isCloseTo(1000, within(3));
    }
  }

  /** A4 is 210 by 297 mm, Letter 215.9 by 279.4 mm; pdfinfo is of poppler-utils. */
  @Test
  void another_program_finds_the_pages_as_large_as_the_paper(@TempDir Path folder)
      throws IOException, InterruptedException {
    Path file = Files.write(folder.resolve("a4.pdf"), pdf(PAGES));
    String told = OutsideProgram.output("pdfinfo", "-box", "-f", "1", "-l", "99", file.toString());
    Matcher box = Pattern.compile("MediaBox: +0.00 +0.00 +([0-9.]+) +([0-9.]+)").matcher(told);
    int pages = 0;
    while (box.find()) {
      pages++;
      assertThat(Double.parseDouble(box.group(1)) * 25.4 / 72).isCloseTo(210, within(0.05));
      assertThat(Double.parseDouble(box.group(2)) * 25.4 / 72).isCloseTo(297, within(0.05));
    }
    assertThat(pages).isEqualTo(PAGES.size());
  }

  /** Names and titles are a person's: they break neither drawing nor PDF. */
  @Test
  void any_name_is_printed_as_it_is() throws IOException {
    String odd = "<lamp> & \"quay\" 灯 \u202e \ud83d\udd6f";
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).saying(odd).sheet();
    List<PaperPage> pages = new ArrayList<>(PaperSheets.cutting(film));
    pages.addAll(PaperSheets.slates(film));
    assertThat(pages.stream().map(DrawnPage::of).map(DrawnPage::text).toList())
        .allSatisfy(text -> assertThat(text).contains("<lamp> & \"quay\" 灯"));
    assertThat(pages).extracting(PaperPage::name).doesNotHaveDuplicates();
    try (PDDocument document = Loader.loadPDF(pdf(pages))) {
      assertThat(new PDFTextStripper().getText(document)).contains("<lamp> & \"quay\" ?");
    }
  }

  @Test
  void a_letter_the_font_lacks_is_plain_or_else_a_question_mark() throws IOException {
    PaperPage page =
        new PaperPage("x", "x", 210, 297, List.of(Ink.Words.plain(20, 20, "Łódź 灯 Ｑｕａｙ ⅷ")));
    try (PDDocument document = Loader.loadPDF(pdf(List.of(page)))) {
      assertThat(new PDFTextStripper().getText(document)).contains("Łódź ? Quay viii");
    }
  }
}
