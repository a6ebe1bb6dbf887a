package org.barsheet.plan.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Film;
import org.barsheet.plan.Measures;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.Texts;

/** Reads the artwork and its models. */
final class ArtworkSection {

  private static final double INCH = 25.4;
  private static final int SQUARES_WIDE = 24;

  /** The model that is the artwork itself, where the plan names none. */
  private static final Artwork.Model ITSELF = new Artwork.Model("artwork", 1, "", "");

  private ArtworkSection() {}

  static Artwork read(Optional<PlanSection> section, Film film) {
    double height = SQUARES_WIDE * (double) film.height() / film.width();
    double[] squares = {SQUARES_WIDE, height};
    if (section.isEmpty()) {
      return new Artwork(INCH, squares[0], squares[1], List.of(), 0, List.of(ITSELF));
    }
    PlanSection given = section.get();
    squares = given.read("squares", squares, text -> Measures.pair(text, "24x13.5"));
    return new Artwork(
        given.read("square", INCH, Measures::millimeters),
        squares[0],
        squares[1],
        given.readAll("palette", Measures::color),
        given.read("smallest-workable", 0.0, Measures::millimeters),
        models(given));
  }

  private static List<Artwork.Model> models(PlanSection artwork) {
    List<Artwork.Model> models = new ArrayList<>();
    for (PlanSection.Named named : artwork.named("models", "model", PlanKeys.MODEL)) {
      PlanSection section = named.section();
      models.add(
          new Artwork.Model(
              named.name().strip(),
              section.read("enlarged", 1.0, Measures::positive),
              section.read("backing", "", Texts::plain),
              section.read("light", "", Texts::plain)));
    }
    if (models.stream().noneMatch(model -> model.enlarged() == 1)) {
      models.add(ITSELF);
    }
    return models;
  }

  /** The model an opening is photographed in where it names none: the artwork itself. */
  static String itself(Artwork artwork) {
    return artwork.models().stream()
        .filter(model -> model.enlarged() == 1)
        .findFirst()
        .orElse(ITSELF)
        .name();
  }
}
