package org.barsheet.photographs;

import java.util.List;
import org.barsheet.pixels.Box;

/**
 * What became of a sequence.
 *
 * @param name of the movement or the plate
 * @param photographs that were paired, in the order of the plan
 * @param unpaired file names of those that are none of the planned ones
 * @param missing permanent names of planned ones that none shows
 * @param questions why the pairing is not plain, in sentences; none where it is
 * @param faults what is wrong, in the order of the plan
 * @param cleanup what has to be painted out, in sentences
 * @param unmeasured what could not be looked at and why, in sentences
 */
public record CheckedSequence(
    String name,
    List<CheckedPhotograph> photographs,
    List<String> unpaired,
    List<String> missing,
    List<String> questions,
    List<PhotographFault> faults,
    List<String> cleanup,
    List<String> unmeasured) {

  public CheckedSequence {
    photographs = List.copyOf(photographs);
    unpaired = List.copyOf(unpaired);
    missing = List.copyOf(missing);
    questions = List.copyOf(questions);
    faults = List.copyOf(faults);
    cleanup = List.copyOf(cleanup);
    unmeasured = List.copyOf(unmeasured);
  }

  /** Whether somebody has to say that the pairing is right before anything is copied. */
  public boolean isUnclear() {
    return !questions.isEmpty();
  }

  /** Permanent names of what has to be taken again. */
  public List<String> again() {
    return photographs.stream()
        .filter(CheckedPhotograph::isToTakeAgain)
        .map(one -> one.planned().name())
        .toList();
  }

  /** Where in an image something is, in words: {@code upper left}. */
  static String place(Box box, int width, int height) {
    double x = (box.left() + box.right()) / 2 / width;
    double y = (box.top() + box.bottom()) / 2 / height;
    String down = y < 0.33 ? "upper" : y > 0.67 ? "lower" : "";
    String across = x < 0.33 ? "left" : x > 0.67 ? "right" : "";
    if (down.isEmpty() && across.isEmpty()) {
      return "the middle";
    }
    String middle = down.isEmpty() ? "middle " + across : down + " middle";
    return "the " + (down.isEmpty() || across.isEmpty() ? middle : down + " " + across);
  }
}
