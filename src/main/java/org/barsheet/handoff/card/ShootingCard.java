package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.plan.Film;
import org.barsheet.plan.Plan;
import org.barsheet.shooting.Setup;
import org.barsheet.text.Html;

/** The cards of one movement in one setup: as many as its photographs need. */
final class ShootingCard {

  /** Rows are as high as there is room for, within what a hand can tick and an eye can find. */
  private static final double LOWEST_ROW = 4.1;

  private static final double HIGHEST_ROW = 7;

  /** What a line of small print takes, and what stands around the lines, in millimeters. */
  private static final double LINE = 3.6;

  private static final double AROUND = 12 + 3 + 2 + 9 + 4 + 3;

  /** Letters of small print to a millimeter, and the share of a card's width beside its title. */
  private static final double LETTERS = 0.68;

  private static final double BESIDE = 0.54;

  private static final double PADDING = 14;

  /** Room for rows that words never take away, in millimeters. */
  private static final double LEAST_ROOM = 60;

  private final FilmSheet film;
  private final Setup setup;
  private final Setup.Run run;
  private final CardFacts facts;

  ShootingCard(FilmSheet film, Setup setup, Setup.Run run) {
    this.film = film;
    this.setup = setup;
    this.run = run;
    this.facts = new CardFacts(film, setup, run);
  }

  /** Each of them as a section of the page. */
  List<Html> sections() {
    int most = (int) (room() / LOWEST_ROW);
    List<List<CardRow>> parts = CardRow.cards(CardRow.of(run), most);
    List<Html> sections = new ArrayList<>();
    for (int part = 0; part < parts.size(); part++) {
      String number = parts.size() == 1 ? "" : " · part " + (part + 1) + " of " + parts.size();
      sections.add(section(parts.get(part), number));
    }
    return sections;
  }

  private Html section(List<CardRow> rows, String number) {
    Html html = new Html();
    html.open("section", "class", "card").line();
    heading(html, number);
    html.open("div", "class", "how").line();
    how().forEach(line -> html.line("p", line));
    html.close().line();
    double row = Math.min(HIGHEST_ROW, room() / rows.size());
    new CardTable(run.movement(), html).write(rows, row);
    html.line("p", "! " + String.join(" ", setup.cautions()), "class", "cautions");
    return html.line("footer", footer()).close().line();
  }

  /** Height left for rows, from how many lines the words above and below are likely to take. */
  private double room() {
    Film.Paper paper = film.plan().film().paper();
    double across = paper.height() / 2 - PADDING;
    int lines =
        lines(facts.lines(), BESIDE * across)
            + lines(how(), across)
            + lines(List.of(String.join(" ", setup.cautions())), across);
    return Math.max(LEAST_ROOM, paper.width() - AROUND - lines * LINE);
  }

  private static int lines(List<String> texts, double millimeters) {
    int letters = (int) (LETTERS * millimeters);
    return texts.stream().mapToInt(text -> 1 + text.length() / letters).sum();
  }

  private void heading(Html html, String number) {
    Plan plan = film.plan();
    html.open("header").open("div").line();
    html.line("h1", "Card " + setup.label(run) + " · " + run.movement().name());
    html.line("p", plan.title() + number).close();
    html.open("div", "class", "facts").line();
    facts.lines().forEach(line -> html.line("p", line));
    html.close().close().line();
  }

  private List<String> how() {
    CardWords words = new CardWords(film.plan(), run.movement());
    List<String> lines = new ArrayList<>();
    lines.add(words.motion());
    lines.add((words.supports() + " " + words.largestStep()).strip());
    lines.add(words.halves());
    lines.removeIf(String::isEmpty);
    lines.addAll(CardWords.minded(setup, run));
    return lines;
  }

  private String footer() {
    StringBuilder versions = new StringBuilder("lengths in mm on the model");
    for (InputFile input : film.inputs()) {
      versions.append(" · ").append(input.role()).append(' ').append(input.version());
    }
    return versions.toString();
  }
}
