package org.barsheet.demo;

/** The two named figures of the demo score, as they first sound. */
public enum Motif {
  /** A wick catching: it flickers up a fourth, falls, leaps down, and settles on the third. */
  GLIMMER("A5/16 D6/16 C#6/8 A5/4 B5/8 E5/8 G5/4 F#5/2"),

  /** A wave: up a fifth, then ebbing by steps to below where it rose. */
  TIDE("D3/2 A3/4+8 G3/8 F3/4 E3/4 C3/2");

  private final String notes;

  Motif(String notes) {
    this.notes = notes;
  }

  Phrase phrase() {
    return Phrase.parse(notes);
  }

  /** As it first sounds. */
  String notes() {
    return notes;
  }
}
