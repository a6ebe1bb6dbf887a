package org.barsheet.handoff.card;

import java.util.List;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPicture;
import org.barsheet.plan.Opening.Support;
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
    html.raw("<table style=\"--row: " + Math.floor(millimetres * 20) / 20 + "mm\">\n");
    html.raw("<colgroup><col class=\"picture\"/>");
    html.raw("<col/>".repeat(columns.size() + (isHeld ? 1 : 0)));
    html.raw("<col class=\"tick\"/><col class=\"note\"/></colgroup>\n<thead><tr>");
    head("picture", "");
    columns.forEach(column -> head(column.name(), column.unit()));
    if (isHeld) {
      html.raw("<th class=\"words\">held by</th>");
    }
    html.raw("<th class=\"tick\">√</th><th class=\"words\">retake</th></tr></thead>\n<tbody>\n");
    rows.forEach(this::row);
    html.raw("</tbody>\n</table>\n");
  }

  private void head(String name, String unit) {
    html.raw("<th>" + Html.escaped(name));
    html.raw(unit.isEmpty() ? "</th>" : "<br/>" + Html.escaped(unit) + "</th>");
  }

  private void row(CardRow row) {
    row.picture().ifPresent(this::picture);
    row.plate()
        .ifPresent(
            plate -> {
              int span = columns.size() + (isHeld ? 1 : 0);
              html.raw("<tr class=\"plate\"><td class=\"picture\">");
              html.raw(Html.escaped(plate.kind().words()) + "</td>");
              html.raw("<td class=\"words\" colspan=\"" + span + "\">");
              html.raw(Html.escaped(plate.kind().purpose()) + "</td>");
              html.raw("<td class=\"tick\"></td><td class=\"note\"></td></tr>\n");
            });
  }

  private void picture(MovedPicture picture) {
    String holds = picture.measures().heldBy().map(Support::kind).orElse("");
    boolean changes = !heldBy.isEmpty() && !holds.equals(heldBy);
    heldBy = holds;
    String name = picture.picture().name();
    html.raw("<tr" + (changes ? " class=\"change\"" : "") + " id=\"" + Html.escaped(name) + "\">");
    html.raw("<td class=\"picture\">" + CardWords.digits(picture) + "</td>");
    for (CardColumn column : columns) {
      boolean hand = picture.picture().number() > 0 && column.isHandled(picture, columns);
      html.raw(hand ? "<td class=\"hand\">" : "<td>");
      html.raw(Html.escaped(column.cell().apply(picture)) + "</td>");
    }
    if (isHeld) {
      String words = picture.picture().number() == 0 ? "" : holds.isEmpty() ? "?" : holds;
      html.raw("<td class=\"" + (changes ? "words hand" : "words") + "\">");
      html.raw(Html.escaped(words) + "</td>");
    }
    html.raw("<td class=\"tick\"></td><td class=\"note\">" + note(picture) + "</td></tr>\n");
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
