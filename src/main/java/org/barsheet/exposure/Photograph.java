package org.barsheet.exposure;

/**
 * One photograph.
 *
 * @param movement permanent name of the movement it belongs to
 * @param number 0 for the model at rest, 1 for the first moved photograph …
 */
public record Photograph(String movement, int number) {

  public Photograph {
    if (number < 0) {
      throw new IllegalArgumentException("photographs count from 0");
    }
  }

  /** Its number in three digits or more: {@code 014}. */
  public String digits() {
    String digits = Integer.toString(number);
    return "0".repeat(Math.max(0, 3 - digits.length())) + digits;
  }

  /** Its permanent name: {@code small-lamp 014}. */
  public String name() {
    return movement + " " + digits();
  }
}
