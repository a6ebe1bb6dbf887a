package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.MusicRuler;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Panel.Appears;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** Who is seen where, from when to when. */
public final class Appearances {

  private final TimingSheet timing;
  private final MusicRuler ruler;
  private final List<PlannedReveal> reveals;
  private final List<OpeningState> states;

  public Appearances(
      TimingSheet timing,
      MusicRuler ruler,
      List<PlannedReveal> reveals,
      List<OpeningState> states) {
    this.timing = timing;
    this.ruler = ruler;
    this.reveals = reveals;
    this.states = states;
  }

  /** Every appearance, in order of shot, then of the plan. */
  public List<Appearance> all() {
    List<Appearance> all = new ArrayList<>();
    for (Shot shot : timing.shots()) {
      for (Appears appears : shot.panel().appears()) {
        all.add(appearance(shot, appears));
      }
    }
    return List.copyOf(all);
  }

  private Appearance appearance(Shot shot, Appears appears) {
    Performer performer = timing.plan().performer(appears.performer()).orElseThrow();
    Opening opening = timing.plan().workshop().opening(appears.opening()).orElseThrow();
    FrameSpan frames = openFrames(shot, opening.name());
    return new Appearance(
        shot.index(), performer, opening, frames, sounding(performer.part(), frames));
  }

  /**
   * From the first gap to the end of the shot; where the opening stands open already, from the
   * shot's start, and where it closes, up to that. An opening that stays closed shows nobody: the
   * whole shot stands for what was asked.
   */
  private FrameSpan openFrames(Shot shot, String opening) {
    long start = shot.frames().start();
    long end = shot.frames().endExclusive();
    boolean closedAtFirst =
        OfShot.states(states, shot.index()).stream()
            .anyMatch(s -> s.opening().equals(opening) && s.atFirstFrame() == 0);
    for (PlannedReveal reveal : OfShot.reveals(reveals, shot.index())) {
      if (reveal.opening().name().equals(opening)) {
        boolean opens = reveal.reveal().way() == Way.OPENS;
        if (opens && closedAtFirst) {
          start = reveal.firstGapFrame();
        } else if (!opens) {
          end = Math.min(end, reveal.fullyOpenFrame());
        }
      }
    }
    return new FrameSpan(start, Math.max(start, end));
  }

  /** Share of the frames in which a part sounds. */
  private double sounding(String partName, FrameSpan frames) {
    Optional<Part> part =
        timing.music().score().parts().stream().filter(p -> p.name().equals(partName)).findFirst();
    if (part.isEmpty() || frames.length() == 0) {
      return 0;
    }
    boolean[] sounds = new boolean[Math.toIntExact(frames.length())];
    for (Note note : timing.music().score().notesOf(part.get())) {
      long from = Math.max(frames.start(), ruler.frameOf(note.onTick()));
      long to = Math.min(frames.endExclusive(), ruler.frameOf(note.offTick()));
      for (long frame = from; frame < to; frame++) {
        sounds[(int) (frame - frames.start())] = true;
      }
    }
    long count = 0;
    for (boolean sound : sounds) {
      count += sound ? 1 : 0;
    }
    return (double) count / sounds.length;
  }
}
