package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.film.FilmSheet;
import org.barsheet.shooting.ArtworkPlate;
import org.barsheet.shooting.Setup;
import org.barsheet.text.Html;

/** The card of the whole artwork at rest: a row for each state that panels stand on. */
final class RestCard {

  /** Room for rows in millimeters, and what a row takes besides its lines. */
  private static final double ROOM = 135;

  private static final double AROUND = 2.5;
  private static final double LINE = 3.6;

  /** Its name, and below it when it is taken. */
  private static final int NAME_LINES = 2;

  /** Letters of small print in a line of the widest column. */
  private static final int LETTERS = 34;

  private static final String CAUTIONS =
      "! Tape cables down, keep exits clear; let lamps cool before you move them; local codes and"
          + " licensed trades come first.";

  private final FilmSheet film;

  RestCard(FilmSheet film) {
    this.film = film;
  }

  /** As many sections as its rows need; none where every panel moves something of the artwork. */
  List<Html> sections() {
    List<List<ArtworkPlate>> parts = parts();
    List<Html> sections = new ArrayList<>();
    for (int part = 0; part < parts.size(); part++) {
      String number = parts.size() == 1 ? "" : " · part " + (part + 1) + " of " + parts.size();
      sections.add(section(parts.get(part), number));
    }
    return sections;
  }

  private List<List<ArtworkPlate>> parts() {
    List<List<ArtworkPlate>> parts = new ArrayList<>();
    double used = ROOM;
    for (ArtworkPlate plate : film.shooting().atRest()) {
      int letters = Math.max(open(plate).length(), 2 * panels(plate).length());
      double height = AROUND + LINE * Math.max(NAME_LINES, 1 + letters / LETTERS);
      if (used + height > ROOM) {
        parts.add(new ArrayList<>());
        used = 0;
      }
      parts.get(parts.size() - 1).add(plate);
      used += height;
    }
    return parts;
  }

  private Html section(List<ArtworkPlate> plates, String number) {
    int card = film.shooting().setups().size() + 1;
    int all = film.shooting().atRest().size();
    Html html = new Html();
    html.open("section", "class", "card rest").line().open("header").open("div").line();
    html.line("h1", "Card " + card + " · artwork at rest");
    html.line("p", film.plan().title() + number).close();
    html.open("div", "class", "facts").line();
    html.line("p", all + (all == 1 ? " photograph" : " photographs") + " of the whole artwork");
    html.close().close().line();
    html.open("div", "class", "how").line();
    html.line("p", "Take each when its turn comes among the cards; nothing moves.").close().line();
    table(html, plates);
    return html.line("p", CAUTIONS, "class", "cautions").close().line();
  }

  private void table(Html html, List<ArtworkPlate> plates) {
    html.open("table").line();
    html.open("colgroup").empty("col", "class", "name").empty("col");
    html.empty("col", "class", "panels").empty("col", "class", "tick");
    html.empty("col", "class", "note").close().line();
    html.open("thead").open("tr");
    List.of("photograph, taken", "is open", "panels")
        .forEach(words -> html.element("th", words, "class", "words"));
    html.element("th", "√", "class", "tick").element("th", "retake", "class", "words");
    html.close().close().line().open("tbody").line();
    plates.forEach(plate -> row(html, plate));
    html.close().line().close().line();
  }

  private void row(Html html, ArtworkPlate plate) {
    html.open("tr", "id", plate.name());
    html.open("td", "class", "words").text(plate.name()).empty("br");
    html.element("b", film.shooting().turnOf(plate).words()).close();
    for (String words : List.of(open(plate), panels(plate))) {
      html.element("td", words, "class", "words");
    }
    html.element("td", "", "class", "tick").element("td", "", "class", "note").close().line();
  }

  private static String open(ArtworkPlate plate) {
    String open =
        plate.open().stream()
            .filter(one -> one.open() > 0)
            .map(RestCard::words)
            .collect(Collectors.joining(", "));
    return open.isEmpty() ? "nothing" : open;
  }

  private static String words(Setup.Standing one) {
    long percent = Math.round(100 * one.open());
    return percent >= 100 ? one.opening() : one.opening() + " " + percent + " %";
  }

  private static String panels(ArtworkPlate plate) {
    return String.join(", ", plate.panels());
  }
}
