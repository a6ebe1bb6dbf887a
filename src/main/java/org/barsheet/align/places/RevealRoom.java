package org.barsheet.align.places;

import java.util.List;
import java.util.Optional;
import org.barsheet.cues.Cue;
import org.barsheet.cues.MusicRuler;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.OnNotes;

/**
 * The room a reveal needs in its shot.
 *
 * @param reveal what moves
 * @param accentFrame film frame of the sounding accent
 * @param landsFrame the same less the lead
 * @param keys where it follows the notes: their frames and photographs
 * @param ways every way of showing it, the one asked first
 */
public record RevealRoom(
    Reveal reveal,
    long accentFrame,
    long landsFrame,
    Optional<NoteKeys> keys,
    List<PhotographRun> ways) {

  public RevealRoom {
    ways = List.copyOf(ways);
  }

  /**
   * The room of a reveal in a shot that sits on a cue.
   *
   * @param accentFrame film frame of the sounding accent
   * @param lead frames the photograph goes before it
   * @param ways every way of showing the reveal
   */
  static RevealRoom of(
      Reveal reveal,
      Cue cue,
      long accentFrame,
      int lead,
      MusicRuler ruler,
      List<PhotographRun> ways) {
    long landsFrame = accentFrame - lead;
    if (reveal.landsOn() instanceof OnNotes && cue.occurrence().isPresent()) {
      List<Long> notes =
          cue.occurrence().get().notes().ticks().stream()
              .map(tick -> ruler.frameOf(tick) - lead)
              .toList();
      NoteKeys keys = NoteKeys.of(notes, reveal.photographs());
      return new RevealRoom(reveal, accentFrame, landsFrame, Optional.of(keys), ways);
    }
    return new RevealRoom(reveal, accentFrame, landsFrame, Optional.empty(), ways);
  }

  /** The same for another reveal that needs as much. */
  RevealRoom of(Reveal other) {
    return new RevealRoom(other, accentFrame, landsFrame, keys, ways);
  }

  /** The room of the same reveal at a place, if it is one of its panel's. */
  public Optional<RevealRoom> in(Candidate place) {
    return place.rooms().stream().filter(room -> room.reveal().equals(reveal)).findFirst();
  }

  /** The same if it has to keep the frames of an earlier run, where it can; else unchanged. */
  RevealRoom keeping(List<Kept.Run> runs) {
    if (runs.isEmpty()) {
      return this;
    }
    List<PhotographRun> same = ways.stream().filter(way -> isOneOf(runs, way)).toList();
    return same.isEmpty() ? this : new RevealRoom(reveal, accentFrame, landsFrame, keys, same);
  }

  /** Whether every way of showing it is on the frames of an earlier run. */
  boolean keeps(List<Kept.Run> runs) {
    return ways.stream().allMatch(way -> isOneOf(runs, way));
  }

  private boolean isOneOf(List<Kept.Run> runs, PhotographRun way) {
    return runs.stream()
        .anyMatch(run -> run.landsFrame() == landsFrame && run.firstFrame() == firstFrame(way));
  }

  /** The best way of showing it in a shot, if there is one at all. */
  public Optional<PhotographRun> fit(long cut, long nextCut) {
    for (PhotographRun way : ways) {
      if (firstFrame(way) >= cut && endFrame(way) <= nextCut) {
        return Optional.of(way);
      }
    }
    return Optional.empty();
  }

  /** The frame of the first moved photograph. */
  public long firstFrame(PhotographRun way) {
    return keys.isPresent()
        ? keys.get().firstFrame() - (long) stepsToFirstKey(way) * way.framesPerPhotograph()
        : landsFrame - way.before();
  }

  /** Photographs shown before the one that stands on the first note. */
  public int stepsToFirstKey(PhotographRun way) {
    int first = keys.map(k -> k.photographs().get(0)).orElse(0);
    return Math.max(0, (int) ((long) first * way.shown() / way.asked()) - 1);
  }

  /** The frame after the last moved photograph's exposure. */
  public long endFrame(PhotographRun way) {
    return keys.isPresent()
        ? keys.get().lastFrame() + way.framesPerPhotograph()
        : landsFrame + way.from();
  }

  /** The latest frame its shot may begin on, if it is shown as little as it can be. */
  public long latestCut() {
    return ways.stream().mapToLong(this::firstFrame).max().orElseThrow();
  }

  /** The earliest frame a shot that begins on a cut may end before; empty if it cannot begin. */
  public Optional<Long> earliestEnd(long cut) {
    return ways.stream()
        .filter(way -> firstFrame(way) >= cut)
        .map(this::endFrame)
        .min(Long::compare);
  }
}
