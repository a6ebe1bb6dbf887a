package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.pixels.CameraMove;

/** Finds photographs in which the camera stood otherwise than in the first. */
final class CameraFaults {

  private static final double LEAST_DETAIL = 0.5;

  private final Frames frames;
  private final double tolerance;

  /**
   * With what may be.
   *
   * @param tolerance pixels of the film's frame by which anything still may be elsewhere
   */
  CameraFaults(Frames frames, double tolerance) {
    this.frames = frames;
    this.tolerance = tolerance;
  }

  /** The most by which anything still is elsewhere, in pixels of the film's frame. */
  double off(CameraMove move) {
    return frames.filmPixels(move.shift() + move.atCorner(frames.width(), frames.height()));
  }

  List<PhotographFault> of(List<CheckedPhotograph> photographs) {
    List<PhotographFault> faults = new ArrayList<>();
    List<CheckedPhotograph> together = new ArrayList<>();
    for (CheckedPhotograph one : photographs) {
      // What is out of focus does not tell so finely where it lies.
      boolean sharp = one.sharpness() > LEAST_DETAIL;
      boolean moved = one.move().isKnown() && sharp && off(one.move()) > tolerance;
      if (!together.isEmpty() && !(moved && isLike(together.get(together.size() - 1), one))) {
        faults.add(fault(together));
        together = new ArrayList<>();
      }
      if (moved) {
        together.add(one);
      }
    }
    if (!together.isEmpty()) {
      faults.add(fault(together));
    }
    return faults;
  }

  private boolean isLike(CheckedPhotograph one, CheckedPhotograph next) {
    CameraMove from = one.move();
    CameraMove to = next.move();
    CameraMove between =
        new CameraMove(
            to.across() - from.across(),
            to.down() - from.down(),
            to.turn() - from.turn(),
            1 + to.scale() - from.scale(),
            to.blocks(),
            0);
    return off(between) < tolerance;
  }

  private PhotographFault fault(List<CheckedPhotograph> together) {
    CheckedPhotograph first = together.get(0);
    String sentence =
        Range.of(together)
            + (together.size() == 1 ? " lies " : " lie ")
            + words(first.move(), frames.every())
            + " off the first photograph, up to "
            + decimal(off(first.move()))
            + " px in the film";
    String remedy =
        together.size() == 1
            ? "Take it again, or even it (--even)."
            : "Check the tripod and the table. Take them again, or even them (--even).";
    return new PhotographFault(FaultKind.CAMERA, Range.names(together), sentence, remedy);
  }

  /** {@code 2.3 px right, 0.4 px up, turned 0.05° clockwise}. */
  static String words(CameraMove move, int every) {
    double across = every * move.across();
    double down = every * move.down();
    List<String> words = new ArrayList<>();
    if (Math.abs(across) >= 0.05) {
      words.add(decimal(Math.abs(across)) + " px " + (across > 0 ? "right" : "left"));
    }
    if (Math.abs(down) >= 0.05) {
      words.add(decimal(Math.abs(down)) + " px " + (down > 0 ? "down" : "up"));
    }
    if (Math.abs(move.turn()) >= 0.005) {
      words.add(
          String.format(
              Locale.ROOT,
              "%.2f° %s",
              Math.abs(move.turn()),
              move.turn() > 0 ? "clockwise" : "counterclockwise"));
    }
    if (Math.abs(move.scale() - 1) >= 0.00005) {
      words.add(
          String.format(
              Locale.ROOT,
              "%.2f %% %s",
              100 * Math.abs(move.scale() - 1),
              move.scale() > 1 ? "larger" : "smaller"));
    }
    return words.isEmpty() ? "a trace" : String.join(", ", words);
  }

  private static String decimal(double number) {
    return String.format(Locale.ROOT, number < 1 ? "%.2f" : "%.1f", number);
  }
}
