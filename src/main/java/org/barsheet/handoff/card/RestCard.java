package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Step;
import org.barsheet.shooting.StepWords;
import org.barsheet.text.Html;

/** A card of the whole artwork at rest: a row for each state that panels stand on. */
final class RestCard {

  /** Room for rows in millimeters, and what a row takes besides its lines. */
  private static final double ROOM = 135;

  private static final double AROUND = 2.5;
  private static final double LINE = 3.6;

  /** Its name may take two. */
  private static final int NAME_LINES = 2;

  /** Letters of small print in a line of the widest column. */
  private static final int LETTERS = 34;

  private static final String CAUTIONS =
      "! Tape cables down, keep exits clear; let lamps cool before you move them; local codes and"
          + " licensed trades come first.";

  private final FilmSheet film;
  private final Setup setup;
  private final List<Step> steps;

  RestCard(FilmSheet film, Setup setup, List<Step> steps) {
    this.film = film;
    this.setup = setup;
    this.steps = steps;
  }

  /** As many sections as its rows need. */
  List<Html> sections() {
    List<List<Step>> parts = parts();
    List<Html> sections = new ArrayList<>();
    for (int part = 0; part < parts.size(); part++) {
      String number = parts.size() == 1 ? "" : " · part " + (part + 1) + " of " + parts.size();
      sections.add(section(parts.get(part), number));
    }
    return sections;
  }

  private List<List<Step>> parts() {
    List<List<Step>> parts = new ArrayList<>();
    double used = ROOM;
    for (Step step : steps) {
      int letters = Math.max(words(step).length(), 2 * panels(step).length());
      double height = AROUND + LINE * Math.max(NAME_LINES, 1 + letters / LETTERS);
      if (used + height > ROOM) {
        parts.add(new ArrayList<>());
        used = 0;
      }
      parts.get(parts.size() - 1).add(step);
      used += height;
    }
    return parts;
  }

  private Html section(List<Step> rows, String number) {
    int all = steps.size();
    Html html = new Html();
    html.open("section", "class", "card rest").line().open("header").open("div").line();
    html.line("h1", "Card " + setup.label(steps.get(0).take()) + " · artwork at rest");
    html.line("p", film.plan().title() + number).close();
    html.open("div", "class", "facts").line();
    html.line("p", all + (all == 1 ? " photograph" : " photographs") + " of the whole artwork");
    html.close().close().line();
    html.open("div", "class", "how").line();
    html.line("p", "From the top down: do what is bold, then take it. Nothing moves meanwhile.")
        .close()
        .line();
    table(html, rows);
    return html.line("p", CAUTIONS, "class", "cautions").close().line();
  }

  private void table(Html html, List<Step> rows) {
    html.open("table").line();
    html.open("colgroup").empty("col", "class", "name").empty("col");
    html.empty("col", "class", "panels").empty("col", "class", "tick");
    html.empty("col", "class", "note").close().line();
    html.open("thead").open("tr");
    List.of("photograph", "first do this; seen open", "panels")
        .forEach(words -> html.element("th", words, "class", "words"));
    html.element("th", "√", "class", "tick").element("th", "retake", "class", "words");
    html.close().close().line().open("tbody").line();
    rows.forEach(row -> row(html, row));
    html.close().line().close().line();
  }

  private void row(Html html, Step step) {
    html.open("tr", "id", step.take().name());
    html.element("td", step.take().name(), "class", "words");
    html.open("td", "class", "words");
    if (!now(step).isEmpty()) {
      html.element("b", now(step)).empty("br");
    }
    html.text(open(step)).close().element("td", panels(step), "class", "words");
    html.element("td", "", "class", "tick").element("td", "", "class", "note").close().line();
  }

  private static String words(Step step) {
    return now(step) + open(step);
  }

  /** What a hand does first. */
  private static String now(Step step) {
    return String.join("; ", StepWords.first(step));
  }

  private static String open(Step step) {
    String open = StepWords.open(step);
    return open.isEmpty() && step.toOpen().isEmpty() ? "nothing open" : open;
  }

  private static String panels(Step step) {
    return String.join(", ", step.take().panels());
  }
}
