package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.Artwork;

/**
 * A model under the camera, lit and squared up once, and everything photographed before camera,
 * lamps or model are moved again.
 *
 * @param number place in the order of work, from 1
 * @param model what is under the camera; its light and backing are the setup's
 * @param view what the camera is to see; empty where no panel gives a field
 * @param steps what is photographed, in the order it is taken, at least one thing
 * @param cautions what to mind in this setup, in sentences
 * @param time how long it takes and when, where the plan gives rates of work
 */
public record Setup(
    int number,
    Artwork.Model model,
    Optional<CameraView> view,
    List<Step> steps,
    List<String> cautions,
    Optional<WorkTime> time) {

  /** The name of a setup in which nothing moves. */
  private static final String AT_REST = "artwork at rest";

  private static final int LETTERS = 26;

  public Setup {
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
  }

  /** Its permanent name: that of its first movement. */
  public String name() {
    return runs().stream().findFirst().map(Run::name).orElse(AT_REST);
  }

  /** The movements, in the order they are taken; none where the artwork only stands at rest. */
  public List<Run> runs() {
    return steps.stream().map(Step::take).flatMap(Setup::run).toList();
  }

  private static Stream<Run> run(Take take) {
    return take instanceof Run run ? Stream.of(run) : Stream.empty();
  }

  /** The photographs of the artwork at rest, in the order they are taken. */
  public List<ArtworkPlate> atRest() {
    return steps.stream()
        .map(Step::take)
        .flatMap(take -> take instanceof ArtworkPlate plate ? Stream.of(plate) : Stream.empty())
        .toList();
  }

  /** Openings whose flaps are cut afresh for it: they stand further open than it wants them. */
  public List<String> openBefore() {
    return steps.stream().flatMap(step -> step.fresh().stream()).distinct().toList();
  }

  /** Whether some flap has to be cut afresh. */
  public boolean closedAgain() {
    return !openBefore().isEmpty();
  }

  /** Its steps card by card: a movement has its own, photographs at rest in a row share one. */
  public List<List<Step>> cards() {
    List<List<Step>> cards = new ArrayList<>();
    boolean atRest = false;
    for (Step step : steps) {
      boolean run = step.take() instanceof Run;
      if (run || !atRest) {
        cards.add(new ArrayList<>());
      }
      cards.get(cards.size() - 1).add(step);
      atRest = !run;
    }
    return cards;
  }

  /** What a card of it goes by: {@code 6} where it is the only one, else {@code 6a, 6b} …. */
  public String label(Take take) {
    List<List<Step>> cards = cards();
    int its = 0;
    while (cards.get(its).stream().noneMatch(step -> step.take().equals(take))) {
      its++;
    }
    boolean lettered = cards.size() <= LETTERS;
    String among = lettered ? String.valueOf((char) ('a' + its)) : "." + (its + 1);
    return cards.size() == 1 ? Integer.toString(number) : number + among;
  }

  /** Photographs taken in it, plates with them. */
  public int photographs() {
    return steps.stream().mapToInt(step -> step.take().photographs()).sum();
  }

  /**
   * A movement photographed from its first photograph to its last.
   *
   * @param movement what is moved
   * @param panels panels that show its photographs, in story order
   * @param standing how far other openings that can be seen stand open meanwhile
   * @param plates photographs without a movement, in the order they are taken
   * @param hours how long its photographs take, the setting up left out, where the plan gives rates
   */
  public record Run(
      Movement movement,
      List<String> panels,
      List<Standing> standing,
      List<Plate> plates,
      OptionalDouble hours)
      implements Take {

    public Run {
      panels = List.copyOf(panels);
      standing = List.copyOf(standing);
      plates = List.copyOf(plates);
    }

    /** The same work at the director's own pace. */
    Run taking(double ownHours) {
      return new Run(movement, panels, standing, plates, OptionalDouble.of(ownHours));
    }

    @Override
    public String name() {
      return movement.name();
    }

    /** Photographs that show a step of the movement: all but the closed one and repeated ones. */
    public int moved() {
      return (int) movement.moved().stream().filter(one -> !one.isLikeBefore()).count();
    }

    /** The closed one, the moved ones that do not look like the one before, the other plates. */
    @Override
    public List<String> taken() {
      List<String> names = new ArrayList<>();
      movement.photographs().stream()
          .filter(one -> !one.isLikeBefore())
          .forEach(one -> names.add(one.photograph().name()));
      plates.stream()
          .filter(plate -> plate.kind() != Plate.Kind.CLOSED)
          .map(Plate::name)
          .forEach(names::add);
      return names;
    }
  }

  /**
   * An opening that can be seen but does not move.
   *
   * @param opening its name
   * @param open 0 closed to 1 fully open
   */
  public record Standing(String opening, double open) {}

  /**
   * A photograph of the model without a movement.
   *
   * @param kind what it is
   * @param name permanent: the closed one is the movement's photograph 000
   */
  public record Plate(Kind kind, String name) {

    /** The plates there are, in the order they are taken. */
    public enum Kind {
      /** The model at rest, before anything moves. */
      CLOSED("closed", "the model at rest, before anything moves: photograph 000"),
      /** The movement done. */
      OPEN("open", "after the last photograph, nothing touched: holds and later panels use it"),
      /** Without what holds the movement. */
      CLEAN("clean", "putty, thread and gauge out of frame: supports are painted out with it"),
      /** Without the lamps that belong to the photograph. */
      LAMP_OFF("lamp off", "the lamps in frame off, everything else unchanged");

      private final String words;
      private final String purpose;

      Kind(String words, String purpose) {
        this.words = words;
        this.purpose = purpose;
      }

      /** {@code lamp off}. */
      public String words() {
        return words;
      }

      /** What it is and what it is for, as a reminder beside the camera. */
      public String purpose() {
        return purpose;
      }
    }
  }
}
