package org.barsheet.handoff;

import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.Picture;
import org.barsheet.timing.Shot;

/** Where the film's pictures are kept, seen from the folder of the sheets. */
final class PicturePaths {

  private static final String FOLDER = "pictures/";

  private PicturePaths() {}

  /** {@code pictures/small-lamp 014.png}. */
  static String of(Picture picture) {
    return FOLDER + FileNames.ofPicture(picture);
  }

  /** The plate of a shot: {@code pictures/panel 7 plate.png}. */
  static String ofPlate(Shot shot) {
    return FOLDER + FileNames.safe(plate(shot)) + ".png";
  }

  /**
   * The permanent name of a shot's plate, what the camera sees of the artwork while nothing moves:
   * {@code panel 7 plate}.
   */
  static String plate(Shot shot) {
    return "panel " + shot.panel().name() + " plate";
  }
}
