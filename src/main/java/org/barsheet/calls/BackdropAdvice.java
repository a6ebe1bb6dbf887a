package org.barsheet.calls;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.barsheet.artwork.ColorWords;
import org.barsheet.artwork.KeyColor;
import org.barsheet.exposure.Appearance;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;

/**
 * What is behind a performer, how they are lit and what they wear, in plain words. Distance and
 * light of a keyed backdrop: common practice, see for instance richardharrington.com, "Shooting
 * green screen", 2012.
 */
final class BackdropAdvice {

  private final Plan plan;
  private final Performer performer;
  private final List<Opening> openings;
  private final List<String> backings;

  BackdropAdvice(Plan plan, Performer performer, List<Appearance> seen) {
    this.plan = plan;
    this.performer = performer;
    this.openings = seen.stream().map(Appearance::opening).distinct().toList();
    this.backings =
        openings.stream()
            .map(this::model)
            .map(Artwork.Model::backing)
            .filter(backing -> !backing.isEmpty())
            .distinct()
            .toList();
  }

  private Artwork.Model model(Opening opening) {
    return plan.workshop().artwork().model(opening.model()).orElseThrow();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    Optional<String> keyed = keyed();
    lines.addAll(keyed.map(BackdropAdvice::keyedOut).orElseGet(this::plain));
    lines.addAll(around());
    lines.add(clothes(keyed));
    return lines;
  }

  /** The color that is replaced in their clip; the plan's own word for it wins. */
  private Optional<String> keyed() {
    if (!performer.behind().isEmpty()) {
      return Optional.of(performer.behind()).filter(word -> KeyColor.hexOf(word).isPresent());
    }
    return backings.stream().filter(word -> KeyColor.hexOf(word).isPresent()).findFirst();
  }

  private static String word(String color) {
    return color.startsWith("#") ? ColorWords.of(color.substring(1)) : color;
  }

  private static List<String> keyedOut(String color) {
    String word = word(color);
    return List.of(
        "Behind you: a "
            + word
            + " wall or cloth that fills all of the box. It's replaced later, so it must be one even "
            + word
            + ": flat, without creases, pattern or shine.",
        "Keep 1.2 m (4 ft) in front of it, so that no shadow falls on it and no "
            + word
            + " light falls on you. Light it evenly from both sides, about as bright as your face.",
        YOURSELF);
  }

  private static final String YOURSELF =
      "Light yourself separately and softly, from the front and a little to one side: a lamp"
          + " turned toward a white wall, say. Nothing may change during the take: no daylight that"
          + " comes and goes.";

  private List<String> plain() {
    String behind =
        performer.behind().isEmpty()
            ? "a plain wall or cloth of one color, without pattern, window or lamp"
            : performer.behind();
    return List.of("Behind you: " + behind + ". It fills all of the box.", YOURSELF);
  }

  /** The light of the film they are put into. */
  private List<String> around() {
    TreeSet<String> lights = new TreeSet<>();
    for (Opening opening : openings) {
      if (!model(opening).light().isEmpty()) {
        lights.add(model(opening).light());
      }
    }
    return lights.isEmpty()
        ? List.of()
        : List.of("In the film, the light around you is: " + String.join(", ", lights) + ".");
  }

  private String clothes(Optional<String> keyed) {
    List<String> colors = performer.behind().isEmpty() ? backings : keyed.stream().toList();
    List<String> words = colors.stream().map(BackdropAdvice::word).distinct().toList();
    String nothing = words.isEmpty() ? "nothing shiny" : "nothing " + String.join(" or ", words);
    Optional<KeyColor> tooNear =
        colors.stream()
            .flatMap(color -> KeyColor.backing(color, performer.clothes()).stream())
            .filter(KeyColor::isTooNear)
            .findFirst();
    return "Wear "
        + nothing
        + (words.isEmpty() ? "" : ", nothing shiny")
        + ", no fine stripes or checks."
        + tooNear.map(BackdropAdvice::otherClothes).orElse("");
  }

  private static String otherClothes(KeyColor key) {
    return " The color you noted, "
        + ColorWords.named(key.nearest())
        + ", is too close to "
        + word(key.word())
        + ": wear something else.";
  }
}
