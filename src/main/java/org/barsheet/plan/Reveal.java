package org.barsheet.plan;

import java.util.Optional;

/**
 * A movement photographed photograph by photograph.
 *
 * @param opening name of the opening that moves
 * @param way whether it opens or closes
 * @param photographs moved photographs, 1 or more; photograph 0 is the model at rest
 * @param framesPerPhotograph 1 on ones, 2 on twos …
 * @param slow where the movement is slow
 * @param evenIn what grows evenly
 * @param lands what the accent frame shows
 * @param landsOn the moment it lands on
 * @param cycle photographs repeated once it has landed its last photograph, until the shot ends
 * @param taken what says that its photographs have been taken and must not change
 * @param where its place in the plan, for messages
 */
public record Reveal(
    String opening,
    Way way,
    int photographs,
    int framesPerPhotograph,
    Slow slow,
    EvenIn evenIn,
    Lands lands,
    LandsOn landsOn,
    Optional<Cycle> cycle,
    Taken taken,
    Where where) {

  public Reveal {
    if (photographs < 1 || framesPerPhotograph < 1) {
      throw new IllegalArgumentException(
          "a reveal has photographs and shows each for a frame or more");
    }
    if (cycle.isPresent() && cycle.get().last() > photographs) {
      throw new IllegalArgumentException("a reveal repeats its own photographs");
    }
  }

  /** What says that photographs have been taken. */
  public enum Taken {
    NOT_YET(""),
    BY_PLAN("photographed: no"),
    BY_TICKS("strike their ticks"),
    BY_BOTH("photographed: no, and strike their ticks");

    private final String undone;

    Taken(String undone) {
      this.undone = undone;
    }

    /** What a person does so that they are taken again. */
    public String undone() {
      return undone;
    }
  }

  /** Whether its photographs have been taken and must not change. */
  public boolean photographed() {
    return taken != Taken.NOT_YET;
  }

  /** The same, of which every photograph is ticked. */
  public Reveal ticked() {
    return with(photographed() ? Taken.BY_BOTH : Taken.BY_TICKS);
  }

  /** The same with every photograph yet to be taken. */
  public Reveal unphotographed() {
    return with(Taken.NOT_YET);
  }

  private Reveal with(Taken other) {
    return new Reveal(
        opening,
        way,
        photographs,
        framesPerPhotograph,
        slow,
        evenIn,
        lands,
        landsOn,
        cycle,
        other,
        where);
  }

  /** Whether a reveal opens or closes its opening. */
  public enum Way {
    OPENS,
    CLOSES
  }

  /**
   * Photographs shown again and again.
   *
   * @param first the first of them, 0 or more
   * @param last the last of them, after {@code first}
   * @param toAndFro whether they go back the way they came; else they begin again
   */
  public record Cycle(int first, int last, boolean toAndFro) {

    public Cycle {
      if (first < 0 || last <= first) {
        throw new IllegalArgumentException("a cycle goes from one photograph to a later one");
      }
    }

    /** How many photographs are shown before the first one comes again. */
    public int length() {
      return toAndFro ? 2 * (last - first) : last - first + 1;
    }

    /** The photograph at a place of the cycle, from 0 to {@code length() - 1}. */
    public int photographAt(int place) {
      int way = last - first;
      return place <= way ? first + place : last - (place - way);
    }
  }

  /** What grows evenly when a movement is even. */
  public enum EvenIn {
    ANGLE,
    OPENING
  }

  /** What the accent frame shows. */
  public enum Lands {
    /** The last photograph. */
    FULLY_OPEN("fully open"),
    /** The first photograph at half the movement or more. */
    HALF_OPEN("half open"),
    /** The first moved photograph. */
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

  /** The same reveal on another moment. */
  public Reveal landingOn(LandsOn other) {
    return new Reveal(
        opening,
        way,
        photographs,
        framesPerPhotograph,
        slow,
        evenIn,
        lands,
        other,
        cycle,
        taken,
        where);
  }

  /** The photograph shown on the accent frame, 1 to {@code photographs}. */
  public int landingPhotograph() {
    return switch (lands) {
      case FULLY_OPEN -> photographs;
      case FIRST_GAP -> 1;
      case HALF_OPEN -> firstPhotographHalfDone();
    };
  }

  private int firstPhotographHalfDone() {
    int photograph = 1;
    while (slow.progress((double) photograph / photographs) < 0.5) {
      photograph++;
    }
    return photograph;
  }

  /** How many frames it takes before and from its accent. */
  public RevealSpan span() {
    int landing = landingPhotograph();
    return new RevealSpan(
        (long) (landing - 1) * framesPerPhotograph,
        (long) (photographs - landing + 1) * framesPerPhotograph);
  }
}
