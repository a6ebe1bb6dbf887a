package org.barsheet.paper;

import java.util.Locale;

/** Kinds of lines, told apart without color: by weight and dashes, in millimeters. */
enum Stroke {
  CUT(0.5, "cut through"),
  TRIM(0.2, "outside of the piece: cut it out along this"),
  CREASE(0.4, "crease, do not cut", "3 1.5"),
  RAIL(0.4, "inner edge of a rail", "6 1.5 0.8 1.5"),
  HIDDEN(0.25, "lies behind or in front, do not cut", "0.6 1.2"),
  THREAD(0.35, "thread, on the back"),
  PUTTY(0.3, "putty, on the back", "1.6 0.8"),
  RULE(0.5, ""),
  SIZE(0.15, ""),
  GRID(0.08, ""),
  REGISTER(0.2, ""),
  CHECK(0.5, "");

  private final double weight;
  private final String words;
  private final String dashes;

  Stroke(double weight, String words) {
    this(weight, words, "");
  }

  Stroke(double weight, String words, String dashes) {
    this.weight = weight;
    this.words = words;
    this.dashes = dashes;
  }

  double weight() {
    return weight;
  }

  /** What a legend says; "" for lines that need none. */
  String words() {
    return words;
  }

  /** Lengths of dash and gap in turn, as SVG spells them; "" for a solid line. */
  String dashes() {
    return dashes;
  }

  /** RRGGBB: the squares of the graph paper stay in the background. */
  String color() {
    return this == GRID ? "A0A6AC" : "000000";
  }

  /** What style sheets call it. */
  String look() {
    return name().toLowerCase(Locale.ROOT);
  }
}
