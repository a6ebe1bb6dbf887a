package org.barsheet.plan.read;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Field;
import org.barsheet.plan.Film;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Slow;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanKeys;

/** Reads what the camera sees of the artwork in a shot. */
final class FieldSection {

  private static final List<PlanKey> SIDE = PlanKeys.FIELD.subList(0, 4);

  /** How far a height may lie from the one that follows from the frame, as a share. */
  private static final double SHAPE = 0.01;

  private final Artwork artwork;
  private final double highPerWide;

  FieldSection(Artwork artwork, Film film) {
    this.artwork = artwork;
    this.highPerWide = (double) film.height() / film.width();
  }

  Optional<Field> read(PlanSection panel) {
    Optional<Entry> entry = panel.entry("field");
    if (entry.isPresent() && entry.get() instanceof Entry.Text) {
      return panel.read("field", FieldText::parse).map(moving -> ofText(panel, moving));
    }
    return panel.section("field", PlanKeys.FIELD).map(this::ofKeys);
  }

  private Field ofText(PlanSection panel, FieldText.Moving moving) {
    Rect from = rect(panel, "field", moving.from());
    Rect to = moving.to().map(side -> rect(panel, "field", side)).orElse(from);
    return new Field(from, to, moving.slow());
  }

  private Field ofKeys(PlanSection field) {
    Slow slow = field.read("slow", Slow.NONE, PanelSection.SLOW);
    if (field.has("from") || field.has("to")) {
      refuseOwnSides(field);
      return new Field(end(field, "from"), end(field, "to"), slow);
    }
    Rect rect = rect(field, "width", sideOf(field));
    if (field.has("slow")) {
      field.problem("slow", "this camera doesn't move", "give from and to, or leave slow out");
    }
    return new Field(rect, rect, slow);
  }

  private static void refuseOwnSides(PlanSection field) {
    for (PlanKey key : SIDE) {
      if (field.has(key.name())) {
        field.problem(
            key.name(),
            "'" + key.name() + "' is given beside from and to",
            "put it inside from or to: from: {left: 1, top: 4.6, width: 6}");
      }
    }
  }

  private Rect end(PlanSection field, String key) {
    Optional<Entry> entry = field.entry(key);
    FieldText.Side side = FieldText.Side.WHOLE;
    if (entry.isPresent() && entry.get() instanceof Entry.Keyed) {
      side = field.section(key, SIDE).map(FieldSection::sideOf).orElse(side);
    } else {
      side = field.need(key, side, "give both from and to", FieldText::parseSide);
    }
    return rect(field, key, side);
  }

  private static FieldText.Side sideOf(PlanSection section) {
    String remedy = "measure the field in squares: {left: 1, top: 4.6, width: 6}";
    double left = section.need("left", 0.0, remedy, Measures::number);
    double top = section.need("top", 0.0, remedy, Measures::number);
    double width = section.need("width", 1.0, remedy, Measures::positive);
    Optional<Double> height = section.read("height", Measures::positive);
    OptionalDouble asked = height.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    return new FieldText.Side(false, left, top, width, asked);
  }

  private Rect rect(PlanSection section, String key, FieldText.Side side) {
    if (side.whole()) {
      return whole();
    }
    double height = side.width() * highPerWide;
    double asked = side.height().orElse(height);
    if (Math.abs(asked - height) > SHAPE * height) {
      section.problem(
          key,
          "a field "
              + Measures.plain(side.width())
              + " wide can't be "
              + Measures.plain(asked)
              + " high",
          "leave height out; it follows from the frame size");
    }
    return new Rect(side.left(), side.top(), side.width(), height);
  }

  /** The smallest field of the film's shape that shows the whole artwork, in its middle. */
  private Rect whole() {
    double width = Math.max(artwork.squaresWide(), artwork.squaresHigh() / highPerWide);
    double height = width * highPerWide;
    return new Rect(
        (artwork.squaresWide() - width) / 2, (artwork.squaresHigh() - height) / 2, width, height);
  }
}
