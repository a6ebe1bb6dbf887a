package org.barsheet.handoff.card;

import java.util.List;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPicture;
import org.barsheet.plan.Opening.Support;
import org.barsheet.shooting.SetUp;
import org.barsheet.text.Html;

/** The rows of a card: a picture each, with what the hand sets for it. */
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
   * @param millimetres height of a row
   */
  void write(List<CardRow> rows, double millimetres) {
    html.open("table", "style", "--row: " + Math.floor(millimetres * 20) / 20 + "mm").line();
    html.open("colgroup").empty("col", "class", "picture");
    for (int column = 0; column < between(); column++) {
      html.empty("col");
    }
    html.empty("col", "class", "tick").empty("col", "class", "note").close().line();
    heads();
    html.open("tbody").line();
    rows.forEach(this::row);
    html.close().line().close().line();
  }

  /** Columns between the picture and its tick. */
  private int between() {
    return columns.size() + (isHeld ? 1 : 0);
  }

  private void heads() {
    html.open("thead").open("tr").element("th", "picture");
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
    row.picture().ifPresent(this::picture);
    row.plate().map(SetUp.Plate::kind).ifPresent(this::plate);
  }

  private void plate(SetUp.Plate.Kind kind) {
    html.open("tr", "class", "plate").element("td", kind.words(), "class", "picture");
    String span = Integer.toString(between());
    html.element("td", kind.purpose(), "class", "words", "colspan", span);
    end("");
  }

  /** The room to tick a picture off and for its note. */
  private void end(String note) {
    html.element("td", "", "class", "tick").element("td", note, "class", "note").close().line();
  }

  private void picture(MovedPicture picture) {
    String holds = picture.measures().heldBy().map(Support::kind).orElse("");
    boolean changes = !heldBy.isEmpty() && !holds.equals(heldBy);
    heldBy = holds;
    html.open("tr", "class", changes ? "change" : "", "id", picture.picture().name());
    html.element("td", CardWords.digits(picture), "class", "picture");
    for (CardColumn column : columns) {
      boolean hand = picture.picture().number() > 0 && column.isHandled(picture, columns);
      html.element("td", column.cell().apply(picture), "class", hand ? "hand" : "");
    }
    if (isHeld) {
      String words = picture.picture().number() == 0 ? "" : holds.isEmpty() ? "?" : holds;
      html.element("td", words, "class", changes ? "words hand" : "words");
    }
    end(note(picture));
  }

  private String note(MovedPicture picture) {
    int number = picture.picture().number();
    if (number == 0) {
      return movement.measure() instanceof Measure.Light ? "dark" : "closed";
    }
    if (picture.isLikeBefore()) {
      return "as " + CardWords.digits(movement.pictures().get(number - 1));
    }
    return number > 1 && number == movement.moved().size() / 2 ? "half taken" : "";
  }
}
