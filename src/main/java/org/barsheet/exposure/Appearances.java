package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.MusicRuler;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Panel.Appears;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.score.Score;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** Who is seen where, from when to when. */
public final class Appearances {

  private final TimingSheet timing;
  private final MusicRuler ruler;
  private final List<PlannedReveal> reveals;
  private final List<OpeningState> states;

  /** Where the notes of each part sound, once for all appearances of whoever plays it. */
  private final Map<String, List<FrameSpan>> notes = new HashMap<>();

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
    if (frames.length() == 0) {
      return 0;
    }
    BitSet sounds = new BitSet(Math.toIntExact(frames.length()));
    for (FrameSpan note : notes.computeIfAbsent(partName, this::notesOf)) {
      long from = Math.max(frames.start(), note.start());
      long to = Math.min(frames.endExclusive(), note.endExclusive());
      if (from < to) {
        sounds.set((int) (from - frames.start()), (int) (to - frames.start()));
      }
    }
    return (double) sounds.cardinality() / frames.length();
  }

  /** The frames on which each note of a part sounds. */
  private List<FrameSpan> notesOf(String partName) {
    Score score = timing.music().score();
    return score.parts().stream()
        .filter(part -> part.name().equals(partName))
        .limit(1)
        .flatMap(part -> score.notesOf(part).stream())
        .map(note -> new FrameSpan(ruler.frameOf(note.onTick()), ruler.frameOf(note.offTick())))
        .toList();
  }
}
