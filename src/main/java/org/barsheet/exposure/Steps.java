package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.align.places.NoteKeys;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;

/**
 * The steps of a reveal: on which frame which of the photographs asked for begins to show. The grid
 * is anchored on the landing frame and counted backwards, so what is left over goes into the closed
 * hold and never into a single odd exposure inside a movement.
 */
final class Steps {

  /**
   * One step.
   *
   * @param frame film frame it begins on
   * @param photograph 1 to the number of photographs asked
   */
  record Step(long frame, int photograph) {}

  private Steps() {}

  /** The steps of a reveal shown in one of its ways, in order of frame. */
  static List<Step> of(RevealRoom room, PhotographRun way) {
    return room.keys().isPresent()
        ? onNotes(room, room.keys().get(), way)
        : landing(room.firstFrame(way), way);
  }

  private static List<Step> landing(long first, PhotographRun way) {
    List<Step> steps = new ArrayList<>();
    for (int step = 1; step <= way.shown(); step++) {
      long frame = first + (long) (step - 1) * way.framesPerPhotograph();
      steps.add(new Step(frame, way.photographAt(step)));
    }
    return steps;
  }

  private static List<Step> onNotes(RevealRoom room, NoteKeys keys, PhotographRun way) {
    List<Step> steps = new ArrayList<>();
    int leading = room.stepsToFirstKey(way);
    for (int step = 1; step <= leading; step++) {
      long frame = room.firstFrame(way) + (long) (step - 1) * way.framesPerPhotograph();
      steps.add(
          new Step(frame, PhotographRun.photograph(keys.photographs().get(0), leading + 1, step)));
    }
    int last = keys.frames().size() - 1;
    for (int key = 0; key < last; key++) {
      addBetween(keys, key, steps);
    }
    steps.add(new Step(keys.lastFrame(), keys.photographs().get(last)));
    return steps.stream().filter(step -> step.photograph() > 0).toList();
  }

  /**
   * Spreads the photographs from one key to the one before the next over the frames between them,
   * each on the nearest frame, a half rounded up: the rule of {@link PhotographRun#photograph}.
   */
  private static void addBetween(NoteKeys keys, int key, List<Step> steps) {
    long start = keys.frames().get(key);
    long frames = keys.frames().get(key + 1) - start;
    int from = keys.photographs().get(key);
    int asked = Math.max(1, keys.photographs().get(key + 1) - from);
    int shown = (int) Math.min(asked, frames);
    for (int step = 0; step < shown; step++) {
      int photograph = from + PhotographRun.photograph(asked, shown, step);
      steps.add(new Step(start + (2L * step * frames + shown) / (2L * shown), photograph));
    }
  }
}
