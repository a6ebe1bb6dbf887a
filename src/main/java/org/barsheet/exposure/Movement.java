package org.barsheet.exposure;

import java.util.List;

/**
 * A movement to photograph once, however many reveals show its pictures.
 *
 * @param name permanent, the first word of its pictures' names
 * @param model what is under the camera
 * @param openings openings whose reveals show it, in story order
 * @param pictures picture 0 and the moved ones, in order
 */
public record Movement(
    String name, String model, List<String> openings, List<MovedPicture> pictures) {

  public Movement {
    openings = List.copyOf(openings);
    pictures = List.copyOf(pictures);
  }

  /**
   * One picture of it as a measure.
   *
   * @param picture which
   * @param progress share of the movement done, 0 to 1
   * @param amount the same in the movement's own unit
   * @param unit "deg", "mm" or "%"
   */
  public record MovedPicture(Picture picture, double progress, double amount, String unit) {}
}
