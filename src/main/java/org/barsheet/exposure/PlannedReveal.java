package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Reveal.Way;

/**
 * A reveal spread over the frames of its shot.
 *
 * @param shot index of its shot
 * @param reveal what was asked
 * @param opening what moves
 * @param movement the movement whose photographs it shows
 * @param layer its layer within the shot, from 1
 * @param accentFrame frame of the sounding accent
 * @param landsFrame frame that shows the landing: the accent less the lead
 * @param firstGapFrame first frame of photograph 1, or of the first moved photograph shown
 * @param halfOpenFrame first frame at half the movement or more
 * @param fullyOpenFrame first frame of the last photograph
 * @param exposures from the shot's first frame to its last, without gaps: the closed hold, the
 *     movement, the open hold
 * @param squeeze what was given up where the music leaves too few frames
 */
public record PlannedReveal(
    int shot,
    Reveal reveal,
    Opening opening,
    String movement,
    int layer,
    long accentFrame,
    long landsFrame,
    long firstGapFrame,
    long halfOpenFrame,
    long fullyOpenFrame,
    List<Exposure> exposures,
    Optional<Squeeze> squeeze) {

  public PlannedReveal {
    exposures = List.copyOf(exposures);
  }

  /** How many moved photographs it shows: those asked, or fewer where it is squeezed. */
  public int photographs() {
    return squeeze.map(Squeeze::photographs).orElse(reveal.photographs());
  }

  /** How many frames it shows each drawing: those asked, or fewer where it is squeezed. */
  public int framesPerPhotograph() {
    return squeeze.map(Squeeze::framesPerPhotograph).orElse(reveal.framesPerPhotograph());
  }

  /**
   * Frames on which it begins to open, or to close: once, or with a cycle again and again. Where
   * its first photograph is a moved one already, it begins on that: its shot begins with it, or the
   * same opening moved before it in the shot.
   *
   * @param way which of the two
   */
  public List<Long> turns(Way way) {
    List<Long> turns = new ArrayList<>();
    int before = directionAtStart(way);
    if (before > 0) {
      turns.add(firstGapFrame);
    }
    for (int i = 1; i < exposures.size(); i++) {
      double change = exposures.get(i).progress() - exposures.get(i - 1).progress();
      int direction = way == Way.OPENS ? Double.compare(change, 0) : Double.compare(0, change);
      if (direction > 0 && before <= 0) {
        turns.add(exposures.get(i).frames().start());
      }
      before = direction == 0 ? before : direction;
    }
    return turns;
  }

  /**
   * 1 where its first photograph has moved in a way, -1 where in the other, 0 where it is at rest.
   */
  private int directionAtStart(Way way) {
    if (exposures.isEmpty() || exposures.get(0).frames().start() != firstGapFrame) {
      return 0;
    }
    return reveal.way() == way ? 1 : -1;
  }

  /**
   * What was given up to fit.
   *
   * @param framesPerPhotograph shown instead of the frames asked
   * @param photographs shown instead of the photographs asked
   * @param errorAmount largest difference, in the movement's unit, between what is shown and what
   *     the asked curve would show on the same frame
   * @param sentence the same in words
   */
  public record Squeeze(
      int framesPerPhotograph, int photographs, double errorAmount, String sentence) {}

  /** How the opening stands on the frame it lands on: one that closes ends closed. */
  public String landing() {
    if (reveal.way() == Reveal.Way.OPENS) {
      return reveal.lands().words();
    }
    return switch (reveal.lands()) {
      case FULLY_OPEN -> "closed";
      case HALF_OPEN -> "half closed";
      case FIRST_GAP -> "begins to close";
    };
  }
}
