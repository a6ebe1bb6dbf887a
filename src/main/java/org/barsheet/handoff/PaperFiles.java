package org.barsheet.handoff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.FileNames;
import org.barsheet.film.FilmSheet;
import org.barsheet.paper.PageSvg;
import org.barsheet.paper.PagesPdf;
import org.barsheet.paper.PaperPage;
import org.barsheet.paper.PaperSheets;

/** What is printed and cut, in {@code paper/}. */
final class PaperFiles {

  private PaperFiles() {}

  static List<HandoffFile> files(FilmSheet sheet, String name) {
    List<HandoffFile> files = new ArrayList<>();
    add(files, name + "-cutting.pdf", sheet, "cutting sheets", PaperSheets.cutting(sheet));
    add(files, name + "-slates.pdf", sheet, "slates", PaperSheets.slates(sheet));
    return files;
  }

  private static void add(
      List<HandoffFile> files, String name, FilmSheet sheet, String what, List<PaperPage> pages) {
    if (pages.isEmpty()) {
      return;
    }
    String title = sheet.plan().title() + ": " + what;
    files.add(new HandoffFile("paper/" + name, out -> PagesPdf.write(title, pages, out)));
    for (PaperPage page : pages) {
      byte[] drawing = PageSvg.of(page).getBytes(StandardCharsets.UTF_8);
      files.add(
          new HandoffFile(
              "paper/" + FileNames.safe(page.name()) + ".svg", out -> out.write(drawing)));
    }
  }
}
