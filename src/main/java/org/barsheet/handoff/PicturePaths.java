package org.barsheet.handoff;

import org.barsheet.exposure.ArtworkPlate;
import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.exposure.Picture;
import org.barsheet.exposure.PlannedReveal;
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
   * The photograph that a shot's plate is cut out of, by its permanent name: one of the whole
   * artwork at rest or, where the artwork itself moves in the shot, the picture it begins with.
   */
  static String photograph(FilmSheet sheet, Shot shot) {
    return sheet.shooting().atRest().stream()
        .filter(picture -> picture.panels().contains(shot.panel().name()))
        .map(ArtworkPlate::name)
        .findFirst()
        .orElseGet(() -> firstPicture(sheet, shot));
  }

  private static String firstPicture(FilmSheet sheet, Shot shot) {
    return sheet.reveals().stream()
        .filter(reveal -> reveal.shot() == shot.index() && isOfArtwork(sheet, reveal))
        .map(reveal -> reveal.exposures().get(0).picture().name())
        .findFirst()
        .orElse("");
  }

  private static boolean isOfArtwork(FilmSheet sheet, PlannedReveal reveal) {
    return sheet
        .timing()
        .plan()
        .artwork()
        .model(reveal.opening().model())
        .map(model -> model.enlarged() == 1)
        .orElse(true);
  }

  /**
   * The permanent name of a shot's plate, what the camera sees of the artwork while nothing moves:
   * {@code panel 7 plate}.
   */
  static String plate(Shot shot) {
    return "panel " + shot.panel().name() + " plate";
  }
}
