package org.barsheet.handoff.card;

import java.util.List;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.plan.Opening.Support;
import org.barsheet.shooting.Setup;
import org.barsheet.text.Html;

/** The rows of a card: a photograph each, with what the hand sets for it. */
final class CardTable {

  private final Movement movement;
  private final List<CardColumn> columns;
  private final boolean isHeld;
  private final Html html;
  private String heldBy = "";

  CardTable(Movement movement, Html html) {
    this.movement = movement;
    this.columns = CardColumn.of(movement);
    this.isHeld = movement.moved().stream().anyMatch(p -> p.measures().heldBy().isPresent());
    this.html = html;
  }

  /**
   * Writes the table of one card.
   *
   * @param millimeters height of a row
   */
  void write(List<CardRow> rows, double millimeters) {
    html.open("table", "style", "--row: " + Math.floor(millimeters * 20) / 20 + "mm").line();
    html.open("colgroup").empty("col", "class", "photograph");
    for (int column = 0; column < between(); column++) {
      html.empty("col");
    }
    html.empty("col", "class", "tick").empty("col", "class", "note").close().line();
    heads();
    html.open("tbody").line();
    rows.forEach(this::row);
    html.close().line().close().line();
  }

  /** Columns between the photograph and its tick. */
  private int between() {
    return columns.size() + (isHeld ? 1 : 0);
  }

  private void heads() {
    html.open("thead").open("tr").element("th", "photograph");
    for (CardColumn column : columns) {
      html.open("th").text(column.name());
      if (!column.unit().isEmpty()) {
        html.empty("br").text(column.unit());
      }
      html.close();
    }
    if (isHeld) {
      html.element("th", "held by", "class", "words");
    }
    html.element("th", "√", "class", "tick").element("th", "retake", "class", "words");
    html.close().close().line();
  }

  private void row(CardRow row) {
    row.photograph().ifPresent(this::photograph);
    row.plate().map(Setup.Plate::kind).ifPresent(this::plate);
  }

  private void plate(Setup.Plate.Kind kind) {
    html.open("tr", "class", "plate").element("td", kind.words(), "class", "photograph");
    String span = Integer.toString(between());
    html.element("td", kind.purpose(), "class", "words", "colspan", span);
    end("");
  }

  /** The room to tick a photograph off and for its note. */
  private void end(String note) {
    end(note, "");
  }

  private void end(String note, String tick) {
    html.element("td", tick, "class", "tick").element("td", note, "class", "note").close().line();
  }

  private void photograph(MovedPhotograph photograph) {
    String holds = photograph.measures().heldBy().map(Support::kind).orElse("");
    boolean changes = !heldBy.isEmpty() && !holds.equals(heldBy);
    heldBy = holds;
    html.open("tr", "class", changes ? "change" : "", "id", photograph.photograph().name());
    html.element("td", CardWords.digits(photograph), "class", "photograph");
    for (CardColumn column : columns) {
      boolean hand = photograph.photograph().number() > 0 && column.isHandled(photograph, columns);
      html.element("td", column.cell().apply(photograph), "class", hand ? "hand" : "");
    }
    if (isHeld) {
      String words = photograph.photograph().number() == 0 ? "" : holds.isEmpty() ? "?" : holds;
      html.element("td", words, "class", changes ? "words hand" : "words");
    }
    end(note(photograph), photograph.isLikeBefore() ? "=" : "");
  }

  private String note(MovedPhotograph photograph) {
    int number = photograph.photograph().number();
    if (number == 0) {
      return movement.measure() instanceof Measure.Light ? "dark" : "closed";
    }
    if (photograph.isLikeBefore()) {
      return "as " + CardWords.digits(movement.photographs().get(number - 1));
    }
    return number > 1 && number == movement.moved().size() / 2 ? "half taken" : "";
  }
}
