package org.barsheet.handoff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.Movement;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.card.DaySheets;
import org.barsheet.handoff.card.Gauge;
import org.barsheet.handoff.card.PhonePage;
import org.barsheet.handoff.card.ShootingCards;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.shooting.WorkDay;

/** What lies beside the camera: the shooting cards, and gauges at true size, in {@code cards/}. */
final class CardFiles {

  private CardFiles() {}

  static List<HandoffFile> files(FilmSheet sheet, String plan) {
    List<HandoffFile> files = new ArrayList<>();
    files.add(file("day-sheets.html", DaySheets.page(sheet)));
    for (WorkDay day : sheet.shooting().days()) {
      String name = "phone-" + day.name().replace(' ', '-') + ".html";
      files.add(file(name, PhonePage.of(sheet, plan, day)));
    }
    if (sheet.movements().isEmpty()) {
      return files;
    }
    files.add(file("shooting-cards.html", ShootingCards.page(sheet)));
    for (Movement movement : sheet.movements()) {
      String title = sheet.plan().title();
      Film.Paper paper = sheet.plan().film().paper();
      Opening opening = sheet.plan().workshop().opening(movement.openings().get(0)).orElseThrow();
      List<String> pages = Gauge.pages(movement, opening, title, paper);
      for (int page = 0; page < pages.size(); page++) {
        String number = page == 0 ? "" : "-" + (page + 1);
        String name = FileNames.safe(movement.name()) + "-gauge" + number + ".svg";
        files.add(file(name, pages.get(page)));
      }
    }
    return files;
  }

  private static HandoffFile file(String name, String text) {
    return new HandoffFile(
        "cards/" + name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
  }
}
