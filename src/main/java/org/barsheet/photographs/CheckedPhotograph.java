package org.barsheet.photographs;

import java.util.List;
import java.util.OptionalDouble;
import org.barsheet.pixels.CameraMove;
import org.barsheet.pixels.LightChange;

/**
 * A photograph, what it is, and what was measured of it.
 *
 * @param taken as it came out of the camera
 * @param planned which of the planned ones it is
 * @param small a small JPEG of it
 * @param move of the camera since the first photograph, in its pixels
 * @param light of what is still, since the first photograph
 * @param sharpness 1 as in the first photograph
 * @param clipped share of what is still that is clipped
 * @param uncovered share of the hole seen uncovered, 0 to 1, where it could be measured
 * @param plannedUncovered what it should be
 * @param marks what is wrong with it
 */
public record CheckedPhotograph(
    Taken taken,
    PlannedPhotograph planned,
    Small small,
    CameraMove move,
    LightChange light,
    double sharpness,
    double clipped,
    OptionalDouble uncovered,
    OptionalDouble plannedUncovered,
    List<FaultKind> marks) {

  public CheckedPhotograph {
    marks = List.copyOf(marks);
  }

  CheckedPhotograph with(List<FaultKind> others) {
    return new CheckedPhotograph(
        taken,
        planned,
        small,
        move,
        light,
        sharpness,
        clipped,
        uncovered,
        plannedUncovered,
        others);
  }

  CheckedPhotograph opened(OptionalDouble share) {
    return new CheckedPhotograph(
        taken, planned, small, move, light, sharpness, clipped, share, plannedUncovered, marks);
  }

  /** Whether it has to be taken again: it cannot be evened. */
  public boolean isToTakeAgain() {
    return marks.stream().anyMatch(FaultKind::again);
  }
}
