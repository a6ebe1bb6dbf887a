package org.barsheet.received;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.barsheet.cues.FilmClock;
import org.barsheet.exposure.Appearance;
import org.barsheet.plan.SentClip;
import org.barsheet.timing.TimingSheet;

/**
 * What is said of a performer's clip: whether it can be used as it is, and why not.
 *
 * @param state what has become of it
 * @param remark what is wrong with it and what the plan notes about it, in one line; or ""
 */
public record ClipVerdict(State state, String remark) {

  /** What has become of a clip. */
  public enum State {
    MISSING,
    UNREADABLE,
    /** It is there, and something about it is wrong. */
    FAULTY,
    USABLE
  }

  /**
   * The verdict on a clip.
   *
   * @param heldAgainst the appearances it is held against
   */
  public static ClipVerdict of(
      ReceivedClip clip, TimingSheet timing, List<Appearance> heldAgainst) {
    FilmClock clock = timing.clock();
    List<ClipFault> faults = new ArrayList<>(ClipCheck.ofWhole(clip, clock, heldAgainst));
    heldAgainst.forEach(one -> faults.addAll(ClipCheck.ofAppearance(clip, clock, one)));
    faults.addAll(PlaceCheck.of(clip, timing));
    faults.addAll(SoundCheck.of(clip, timing));
    Stream<String> told =
        timing.plan().clips().of(clip.performer().name()).stream()
            .map(SentClip::note)
            .filter(note -> !note.isEmpty());
    String remark =
        Stream.concat(faults.stream().map(ClipFault::sentence), told)
            .collect(Collectors.joining("; "));
    return new ClipVerdict(state(clip, faults), remark);
  }

  private static State state(ReceivedClip clip, List<ClipFault> faults) {
    return switch (clip.state()) {
      case MISSING -> State.MISSING;
      case UNREADABLE -> State.UNREADABLE;
      case RECEIVED -> ClipCheck.isUsable(faults) ? State.USABLE : State.FAULTY;
    };
  }
}
