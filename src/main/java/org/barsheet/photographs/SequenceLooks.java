package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.pixels.Box;

/**
 * What was seen of the photographs of a sequence that have its usual size and show its subject.
 *
 * @param frames their pixels
 * @param planned where the plan has the hole, where something moves
 * @param order places of those photographs among all that were taken
 * @param looks what was seen of them, in the same order
 * @param otherSize photographs of another size
 * @param otherSubject photographs that show something else
 * @param follows whether the camera could be followed
 */
record SequenceLooks(
    Frames frames,
    Optional<HoleGeometry> planned,
    List<Integer> order,
    List<Look> looks,
    List<Taken> otherSize,
    List<Taken> otherSubject,
    boolean follows) {

  /**
   * Looks at all of them.
   *
   * @throws InputException naming every photograph that cannot be decoded
   */
  static SequenceLooks of(
      PlannedSequence sequence,
      List<Taken> taken,
      Optional<Taken> first,
      int filmWidth,
      int filmHeight,
      Runnable each) {
    Taken usual = usual(taken);
    Frames frames = Frames.of(usual.facts(), filmWidth, filmHeight);
    Optional<HoleGeometry> hole =
        sequence
            .moving()
            .flatMap(
                moving ->
                    moving
                        .view()
                        .map(
                            view ->
                                HoleGeometry.planned(
                                    moving, view, frames.width(), frames.height())));
    List<Taken> ofSize = taken.stream().filter(one -> isLike(one, usual)).toList();
    List<Look> looks = looks(ofSize, first.filter(one -> isLike(one, usual)), hole, each);
    long known = looks.stream().filter(one -> one.move().isKnown()).count();
    boolean follows = 2 * known > looks.size();
    List<Integer> order = new ArrayList<>();
    List<Look> kept = new ArrayList<>();
    List<Taken> others = new ArrayList<>();
    for (int i = 0; i < ofSize.size(); i++) {
      if (follows && looks.size() > 2 && !looks.get(i).move().isKnown()) {
        others.add(ofSize.get(i));
      } else {
        order.add(taken.indexOf(ofSize.get(i)));
        kept.add(looks.get(i));
      }
    }
    List<Taken> otherSize = taken.stream().filter(one -> !isLike(one, usual)).toList();
    return new SequenceLooks(frames, hole, order, kept, otherSize, others, follows);
  }

  private static boolean isLike(Taken one, Taken usual) {
    return one.facts().width() == usual.facts().width()
        && one.facts().height() == usual.facts().height();
  }

  /** One of the size that most of them have. */
  private static Taken usual(List<Taken> taken) {
    Map<String, List<Taken>> bySize = new LinkedHashMap<>();
    for (Taken one : taken) {
      String size = one.facts().width() + "x" + one.facts().height();
      bySize.computeIfAbsent(size, none -> new ArrayList<>()).add(one);
    }
    List<Taken> most = List.of();
    for (List<Taken> alike : bySize.values()) {
      most = alike.size() > most.size() ? alike : most;
    }
    return most.get(0);
  }

  private static List<Look> looks(
      List<Taken> ofSize, Optional<Taken> first, Optional<HoleGeometry> hole, Runnable each) {
    Looks.Seen seen = seen(first.orElse(ofSize.get(0)), ofSize, hole, each);
    long known = seen.looks().values().stream().filter(one -> one.move().isKnown()).count();
    boolean strangeFirst = first.isEmpty() && ofSize.size() > 2 && 2 * known < ofSize.size();
    Looks.Seen last =
        strangeFirst ? seen(ofSize.get(ofSize.size() / 2), ofSize, hole, () -> {}) : seen;
    return List.copyOf(last.looks().values());
  }

  private static Looks.Seen seen(
      Taken reference, List<Taken> ofSize, Optional<HoleGeometry> hole, Runnable each) {
    List<Box> moving = hole.map(there -> List.of(there.sweep())).orElse(List.of());
    Optional<Box> about = hole.map(SequenceLooks::about);
    try {
      Looks.Seen seen = Looks.of(reference, ofSize, moving, about, each);
      if (seen.broken().isEmpty()) {
        return seen;
      }
      List<Problem> problems = new ArrayList<>();
      seen.broken().forEach((index, reason) -> problems.add(problem(ofSize.get(index), reason)));
      throw new InputException(problems);
    } catch (UnreadablePhotographException unreadable) {
      throw new InputException(problem(reference, unreadable));
    }
  }

  private static Box about(HoleGeometry hole) {
    return hole.hole().padded(0.3 * Math.min(hole.hole().width(), hole.hole().height()));
  }

  private static Problem problem(Taken one, UnreadablePhotographException unreadable) {
    return Problem.ofFile(
        one.file().toString(), "the photograph " + unreadable.reason(), unreadable.remedy());
  }
}
