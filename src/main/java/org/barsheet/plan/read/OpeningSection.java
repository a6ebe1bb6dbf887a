package org.barsheet.plan.read;

import java.util.List;
import java.util.Optional;
import org.barsheet.input.Nearest;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Where;
import org.barsheet.plan.WordChoice;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.Texts;

/** Reads the openings. */
final class OpeningSection {

  private static final WordChoice<Opening.Side> SIDES = WordChoice.of(Opening.Side.values());
  private static final List<String> MOTIONS =
      List.of("hinge", "slides", "lifts", "brightens", "iris", "values");

  /** Room for rounding where an opening ends on the artwork's edge, in squares. */
  private static final double EDGE = 1e-6;

  private final Artwork artwork;

  OpeningSection(Artwork artwork) {
    this.artwork = artwork;
  }

  List<Opening> read(PlanSection plan) {
    return plan.named("openings", "opening", PlanKeys.OPENING).stream()
        .map(named -> opening(named.name().strip(), named.where(), named.section()))
        .toList();
  }

  private Opening opening(String name, Where where, PlanSection section) {
    Opening.Motion motion = motion(section).orElse(new Opening.Brightens(100));
    return new Opening(
        name,
        rect(section),
        model(section),
        motion,
        section.readAll("held-by", Supports::parse),
        where);
  }

  private Rect rect(PlanSection section) {
    String remedy = "measure it in squares of the artwork";
    Rect rect =
        new Rect(
            section.need("left", 0.0, remedy, Measures::number),
            section.need("top", 0.0, remedy, Measures::number),
            section.need("width", 1.0, remedy, Measures::positive),
            section.need("height", 1.0, remedy, Measures::positive));
    boolean inside =
        rect.left() + rect.width() <= artwork.squaresWide() + EDGE
            && rect.top() + rect.height() <= artwork.squaresHigh() + EDGE;
    boolean read = List.of("left", "top", "width", "height").stream().allMatch(section::isRead);
    if (read && !inside) {
      section.problem(
          "left",
          section.title()
              + " reaches to "
              + Measures.plain(rect.left() + rect.width())
              + " across and "
              + Measures.plain(rect.top() + rect.height())
              + " down; the artwork has "
              + Measures.plain(artwork.squaresWide())
              + "x"
              + Measures.plain(artwork.squaresHigh())
              + " squares",
          "move it inside, or set artwork.squares");
    }
    return rect;
  }

  private String model(PlanSection section) {
    String model = section.read("model", ArtworkSection.itself(artwork), Texts::plain).strip();
    if (artwork.model(model).isEmpty()) {
      List<String> known = artwork.models().stream().map(Artwork.Model::name).toList();
      section.problem(
          "model",
          "no model is called " + model,
          Nearest.remedy(model, known, "list it under artwork.models"));
    }
    return model;
  }

  private Optional<Opening.Motion> motion(PlanSection section) {
    List<String> given = MOTIONS.stream().filter(section::has).toList();
    if (given.size() != 1) {
      String sentence =
          given.isEmpty()
              ? section.title() + " doesn't say how it opens"
              : section.title() + " opens in several ways: " + String.join(", ", given);
      String remedy = "give exactly one of: " + String.join(", ", MOTIONS);
      section.problem(given.isEmpty() ? "" : given.get(1), sentence, remedy);
      return Optional.empty();
    }
    String kind = given.get(0);
    checkCompanion(section, "to", "hinge", kind);
    checkCompanion(section, "by", "slides", kind);
    checkCompanion(section, "unit", "values", kind);
    return Optional.of(motionOf(kind, section));
  }

  private static void checkCompanion(PlanSection section, String key, String of, String kind) {
    if (section.has(key) && !kind.equals(of)) {
      section.problem(
          key, "'" + key + "' belongs to '" + of + "', not to '" + kind + "'", "delete it");
    }
  }

  private static Opening.Motion motionOf(String kind, PlanSection section) {
    return switch (kind) {
      case "hinge" ->
          new Opening.Hinged(
              section.read("hinge", Opening.Side.LEFT, SIDES),
              section.need("to", 90.0, "say how far it opens: to: 90 deg", Measures::degrees));
      case "slides" ->
          new Opening.Slides(
              section.read("slides", Opening.Side.LEFT, SIDES),
              section.read("by", 0.0, Measures::millimeters));
      case "lifts" -> new Opening.LiftsOff(section.read("lifts", 1.0, Measures::millimeters));
      case "brightens" ->
          new Opening.Brightens(section.read("brightens", 100.0, Measures::percent));
      case "iris" -> new Opening.Iris(section.read("iris", 100.0, Measures::percent));
      default ->
          new Opening.Values(
              section.readAll("values", Measures::value),
              section.need("unit", "", "say what the values count: unit: mm", Texts::plain));
    };
  }
}
