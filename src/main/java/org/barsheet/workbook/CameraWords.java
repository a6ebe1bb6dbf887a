package org.barsheet.workbook;

import org.barsheet.plan.Plan;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.Setup;
import org.barsheet.workbook.pen.SheetWords;

/** What the camera is set to, short enough for every row. */
final class CameraWords {

  private CameraWords() {}

  /** {@code 61 × 34.3 cm, 897 mm, 50 mm lens}, as much as is known. */
  static String of(Setup setup, Plan plan) {
    String lens =
        plan.workshop()
            .camera()
            .map(camera -> ", " + millimeters(camera.lensMillimeters()) + " lens")
            .orElse("");
    return setup.view().map(view -> of(view) + lens).orElse("");
  }

  private static String of(CameraView view) {
    String field =
        centimeters(view.millimetersWide()) + " × " + centimeters(view.millimetersHigh()) + " cm";
    return view.distanceMillimeters().isPresent()
        ? field + ", " + Math.round(view.distanceMillimeters().getAsDouble()) + " mm"
        : field;
  }

  static String centimeters(double millimeters) {
    return SheetWords.plain(SheetWords.rounded(millimeters / 10, 1));
  }

  private static String millimeters(double millimeters) {
    return SheetWords.plain(SheetWords.rounded(millimeters, 1)) + " mm";
  }
}
