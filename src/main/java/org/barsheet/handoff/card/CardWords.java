package org.barsheet.handoff.card;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.artwork.Measure;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Support;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.shooting.Setup;

/** The lines above a card's rows: how the thing moves and what to mind on the way. */
final class CardWords {

  private static final Map<EvenIn, String> IN =
      Map.of(EvenIn.ANGLE, "in angle", EvenIn.OPENING, "in opening");

  private final Movement movement;
  private final Opening opening;
  private final Hand hand;

  CardWords(Plan plan, Movement movement) {
    this.movement = movement;
    this.opening = plan.workshop().opening(movement.openings().get(0)).orElseThrow();
    this.hand = plan.workshop().hand();
  }

  /** {@code Flap, hinge left, free edge at 114.3 mm, to 90 deg. Slow end, even in angle. …} */
  String motion() {
    return kind() + " to " + whole() + ". " + curve() + setTo();
  }

  private String kind() {
    if (opening.motion() instanceof Opening.Hinged hinged
        && movement.measure() instanceof Measure.Turn turn) {
      String edge = Amounts.tenth(turn.hinge().flap());
      return "Flap, hinge " + word(hinged.hinge()) + ", free edge at " + edge + " mm,";
    }
    if (opening.motion() instanceof Opening.Slides slides) {
      return "Shutter, slides " + direction(slides.toward()) + ",";
    }
    if (opening.motion() instanceof Opening.LiftsOff) {
      return "Piece, lifted straight up";
    }
    if (opening.motion() instanceof Opening.Brightens) {
      return "Lamp, brightens";
    }
    return opening.motion() instanceof Opening.Iris ? "Iris, grows" : "As listed, at last";
  }

  private String whole() {
    BigDecimal last = movement.photographs().get(movement.moved().size()).measures().set();
    return Amounts.plain(last) + " " + movement.measure().unit();
  }

  private String curve() {
    if (movement.measure() instanceof Measure.Listed) {
      return "";
    }
    String slow =
        switch (movement.slow()) {
          case NONE -> "Even";
          case START -> "Slow at the start";
          case END -> "Slow at the end";
          case BOTH -> "Slow at both ends";
        };
    boolean growsByAngleOrOpening =
        movement.measure() instanceof Measure.Turn
            || movement.measure() instanceof Measure.Widening;
    return slow + (growsByAngleOrOpening ? " " + IN.get(movement.evenIn()) : "");
  }

  private String setTo() {
    double unit =
        switch (movement.measure().unit()) {
          case "deg" -> hand.degrees();
          case "mm" -> hand.millimeters();
          default -> hand.percent();
        };
    return movement.measure() instanceof Measure.Listed
        ? ""
        : ", set to "
            + Amounts.plain(BigDecimal.valueOf(unit))
            + " "
            + movement.measure().unit()
            + ".";
  }

  /** {@code Half the photographs at 015, half the movement at 009.} */
  String halves() {
    int moved = movement.moved().size();
    if (moved < 2) {
      return "";
    }
    String halfDone =
        movement.moved().stream()
            .filter(photograph -> photograph.progress() >= 0.5)
            .map(CardWords::digits)
            .findFirst()
            .orElse("");
    return "Half the photographs are done at "
        + digits(movement.photographs().get(moved / 2))
        + " of "
        + digits(movement.photographs().get(moved))
        + ", half the movement at "
        + halfDone
        + ".";
  }

  /** {@code Largest step 6.3 mm, to 001.} */
  String largestStep() {
    MovedPhotograph largest = movement.moved().get(0);
    for (MovedPhotograph photograph : movement.moved()) {
      largest = step(photograph).compareTo(step(largest)) > 0 ? photograph : largest;
    }
    boolean hasEdge = largest.measures().edgeStep().isPresent();
    return "Largest step "
        + step(largest).toPlainString()
        + (hasEdge ? " mm" : " " + movement.measure().unit())
        + ", to "
        + digits(largest)
        + ".";
  }

  private static BigDecimal step(MovedPhotograph photograph) {
    return photograph.measures().edgeStep().orElse(photograph.measures().step().abs());
  }

  /** {@code Held by putty, from 007 thread.} */
  String supports() {
    List<String> words = new ArrayList<>();
    Optional<Support> before = Optional.empty();
    for (MovedPhotograph photograph : movement.moved()) {
      Optional<Support> now = photograph.measures().heldBy();
      if (!now.equals(before)) {
        String what = now.map(Support::kind).orElse("nothing the plan names");
        words.add(words.isEmpty() ? "Held by " + what : "from " + digits(photograph) + " " + what);
      }
      before = now;
    }
    return words.isEmpty() ? "" : String.join(", ", words) + ".";
  }

  /** What else stands open, and whether the paper has to be new. */
  static List<String> minded(Setup setup, Setup.Run run) {
    List<String> lines = new ArrayList<>();
    setup.steps().stream()
        .filter(step -> step.take().equals(run) && !step.fresh().isEmpty())
        .forEach(
            step -> lines.add("! Put in a fresh flap: " + String.join(", ", step.fresh()) + "."));
    if (!run.standing().isEmpty()) {
      lines.add(
          "Meanwhile "
              + run.standing().stream().map(CardWords::standing).collect(Collectors.joining(", "))
              + ".");
    }
    return lines;
  }

  /** {@code lamp-1 open 40 %}. */
  private static String standing(Setup.Standing standing) {
    long percent = Math.round(100 * standing.open());
    return standing.opening()
        + (percent == 0 ? " closed" : percent == 100 ? " open" : " open " + percent + " %");
  }

  /** {@code 014}, the number at the end of a photograph's name. */
  static String digits(MovedPhotograph photograph) {
    String name = photograph.photograph().name();
    return name.substring(name.lastIndexOf(' ') + 1);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private static String direction(Opening.Side side) {
    return switch (side) {
      case TOP -> "up";
      case BOTTOM -> "down";
      case LEFT, RIGHT -> word(side);
    };
  }
}
