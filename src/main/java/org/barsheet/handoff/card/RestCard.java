package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.film.FilmSheet;
import org.barsheet.shooting.ArtworkPlate;
import org.barsheet.shooting.SetUp;
import org.barsheet.text.Html;

/** The card of the whole artwork at rest: a row for each state that panels stand on. */
final class RestCard {

  /** Room for rows in millimetres, and what a row takes besides its lines. */
  private static final double ROOM = 135;

  private static final double AROUND = 2.5;
  private static final double LINE = 3.6;

  /** Its name, and below it when it is taken. */
  private static final int NAME_LINES = 2;

  /** Letters of small print in a line of the widest column. */
  private static final int LETTERS = 34;

  private final FilmSheet film;

  RestCard(FilmSheet film) {
    this.film = film;
  }

  /** As many sections as its rows need; none where every panel moves something of the artwork. */
  List<String> sections() {
    List<List<ArtworkPlate>> parts = parts();
    List<String> sections = new ArrayList<>();
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
      double high = AROUND + LINE * Math.max(NAME_LINES, 1 + letters / LETTERS);
      if (used + high > ROOM) {
        parts.add(new ArrayList<>());
        used = 0;
      }
      parts.get(parts.size() - 1).add(plate);
      used += high;
    }
    return parts;
  }

  private String section(List<ArtworkPlate> plates, String number) {
    int card = film.shooting().setUps().size() + 1;
    int all = film.shooting().atRest().size();
    Html html = new Html();
    html.raw("<section class=\"card rest\">\n<header><div>\n");
    html.element("h1", "Card " + card + " · artwork at rest");
    html.element("p", film.plan().title() + number);
    html.raw("</div><div class=\"facts\">\n");
    html.element("p", all + (all == 1 ? " picture" : " pictures") + " of the whole artwork");
    html.raw("</div></header>\n<div class=\"how\">\n");
    html.element("p", "Take each in its turn among the cards; nothing moves in it.");
    html.raw("</div>\n<table>\n<colgroup><col class=\"name\"/><col/><col class=\"panels\"/>");
    html.raw("<col class=\"tick\"/><col class=\"note\"/></colgroup>\n<thead><tr>");
    html.raw("<th class=\"words\">picture, taken</th><th class=\"words\">stands open</th>");
    html.raw("<th class=\"words\">panels</th><th class=\"tick\">√</th>");
    html.raw("<th class=\"words\">retake</th></tr></thead>\n<tbody>\n");
    plates.forEach(plate -> row(html, plate));
    html.raw("</tbody>\n</table>\n");
    html.raw(
        "<p class=\"cautions\">! Cables taped down, ways out clear; let lamps cool before you");
    html.raw(" move them; local codes and licensed trades come first.</p>\n");
    return html.raw("</section>\n").toString();
  }

  private void row(Html html, ArtworkPlate plate) {
    html.raw("<tr id=\"" + Html.escaped(plate.name()) + "\">");
    String turn = film.shooting().turnOf(plate).words();
    html.raw("<td class=\"words\">" + Html.escaped(plate.name()) + "<br/>");
    html.raw("<b>" + Html.escaped(turn) + "</b></td>");
    for (String words : List.of(open(plate), panels(plate))) {
      html.raw("<td class=\"words\">" + Html.escaped(words) + "</td>");
    }
    html.raw("<td class=\"tick\"></td><td class=\"note\"></td></tr>\n");
  }

  private static String open(ArtworkPlate plate) {
    String open =
        plate.open().stream()
            .filter(one -> one.open() > 0)
            .map(RestCard::words)
            .collect(Collectors.joining(", "));
    return open.isEmpty() ? "nothing" : open;
  }

  private static String words(SetUp.Standing one) {
    long percent = Math.round(100 * one.open());
    return percent >= 100 ? one.opening() : one.opening() + " " + percent + " %";
  }

  private static String panels(ArtworkPlate plate) {
    return String.join(", ", plate.panels());
  }
}
