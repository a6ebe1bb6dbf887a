package org.barsheet.shooting;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.exposure.Movement;
import org.barsheet.plan.Artwork;

/**
 * A model under the camera, lit and squared up once, and everything photographed before it is moved
 * again.
 *
 * @param number place in the order of work, from 1
 * @param model what is under the camera; its light and backing are the setup's
 * @param openBefore openings that stand further open on the piece used before than is wanted now:
 *     paper rarely closes cleanly, so a fresh piece is wanted; none where the same piece serves
 * @param view what the camera is to see; empty where no panel gives a field
 * @param runs the movements, in the order they are taken, at least one
 * @param cautions what to mind in this setup, in sentences
 * @param time how long it takes and when, where the plan gives rates of work
 */
public record Setup(
    int number,
    Artwork.Model model,
    List<String> openBefore,
    Optional<CameraView> view,
    List<Run> runs,
    List<String> cautions,
    Optional<WorkTime> time) {

  private static final int LETTERS = 26;

  public Setup {
    openBefore = List.copyOf(openBefore);
    runs = List.copyOf(runs);
    cautions = List.copyOf(cautions);
  }

  /** Its permanent name: that of its first movement. */
  public String name() {
    return runs.get(0).movement().name();
  }

  /** Whether a fresh piece is wanted. */
  public boolean closedAgain() {
    return !openBefore.isEmpty();
  }

  /** What one of its cards goes by: {@code 6} where it is the only one, else {@code 6a, 6b} …. */
  public String label(Run run) {
    int index = runs.indexOf(run);
    boolean lettered = runs.size() > 1 && runs.size() <= LETTERS;
    String among = lettered ? String.valueOf((char) ('a' + index)) : "." + (index + 1);
    return runs.size() == 1 ? Integer.toString(number) : number + among;
  }

  /** Photographs taken in it, plates with them. */
  public int photographs() {
    return runs.stream().mapToInt(Run::photographs).sum();
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
      OptionalDouble hours) {

    public Run {
      panels = List.copyOf(panels);
      standing = List.copyOf(standing);
      plates = List.copyOf(plates);
    }

    /** Photographs that show a step of the movement: all but the closed one. */
    public int moved() {
      return movement.photographs().size() - 1;
    }

    /** All its photographs. */
    public int photographs() {
      return moved() + plates.size();
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
