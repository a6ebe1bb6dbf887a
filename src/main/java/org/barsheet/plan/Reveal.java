package org.barsheet.plan;

import java.util.Optional;

/**
 * A movement photographed picture by picture.
 *
 * @param opening name of the opening that moves
 * @param way whether it opens or closes
 * @param pictures moved pictures, 1 or more; picture 0 is the model at rest
 * @param framesPerPicture 1 on ones, 2 on twos …
 * @param slow where the movement is slow
 * @param evenIn what grows evenly
 * @param lands what the accent frame shows
 * @param landsOn the moment it lands on
 * @param cycle pictures repeated once it has landed its last picture, until the shot ends
 * @param photographed whether its pictures have been taken and must not change
 * @param where its place in the plan, for messages
 */
public record Reveal(
    String opening,
    Way way,
    int pictures,
    int framesPerPicture,
    Slow slow,
    EvenIn evenIn,
    Lands lands,
    LandsOn landsOn,
    Optional<Cycle> cycle,
    boolean photographed,
    Where where) {

  public Reveal {
    if (pictures < 1 || framesPerPicture < 1) {
      throw new IllegalArgumentException(
          "a reveal has pictures and shows each for a frame or more");
    }
    if (cycle.isPresent() && cycle.get().last() > pictures) {
      throw new IllegalArgumentException("a reveal repeats its own pictures");
    }
  }

  /** Whether a reveal opens or closes its opening. */
  public enum Way {
    OPENS,
    CLOSES
  }

  /**
   * Pictures shown again and again.
   *
   * @param first the first of them, 0 or more
   * @param last the last of them, after {@code first}
   * @param toAndFro whether they go back the way they came; else they begin again
   */
  public record Cycle(int first, int last, boolean toAndFro) {

    public Cycle {
      if (first < 0 || last <= first) {
        throw new IllegalArgumentException("a cycle goes from one picture to a later one");
      }
    }

    /** How many pictures are shown before the first one comes again. */
    public int length() {
      return toAndFro ? 2 * (last - first) : last - first + 1;
    }

    /** The picture at a place of the cycle, from 0 to {@code length() - 1}. */
    public int pictureAt(int place) {
      int way = last - first;
      return place <= way ? first + place : last - (place - way);
    }
  }

  /** What grows evenly when a movement is even. */
  public enum EvenIn {
    ANGLE,
    APERTURE
  }

  /** What the accent frame shows. */
  public enum Lands {
    /** The last picture. */
    FULLY_OPEN("fully open"),
    /** The first picture at half the movement or more. */
    HALF_OPEN("half open"),
    /** The first moved picture. */
    FIRST_GAP("first gap");

    private final String words;

    Lands(String words) {
      this.words = words;
    }

    /** The words a plan uses. */
    public String words() {
      return words;
    }
  }

  /** The moment a reveal lands on. */
  public sealed interface LandsOn {}

  /** The accent of the panel's cue. */
  public record OnAccent() implements LandsOn {}

  /** Each note of the panel's occurrence is a key position. */
  public record OnNotes() implements LandsOn {}

  /**
   * A place of its own.
   *
   * @param place anything but "anywhere"
   */
  public record OnPlace(Place place) implements LandsOn {}

  /** The picture shown on the accent frame, 1 to {@code pictures}. */
  public int landingPicture() {
    return switch (lands) {
      case FULLY_OPEN -> pictures;
      case FIRST_GAP -> 1;
      case HALF_OPEN -> firstPictureHalfDone();
    };
  }

  private int firstPictureHalfDone() {
    int picture = 1;
    while (slow.progress((double) picture / pictures) < 0.5) {
      picture++;
    }
    return picture;
  }

  /** How many frames it takes before and from its accent. */
  public RevealSpan span() {
    int landing = landingPicture();
    return new RevealSpan(
        (long) (landing - 1) * framesPerPicture,
        (long) (pictures - landing + 1) * framesPerPicture);
  }
}
