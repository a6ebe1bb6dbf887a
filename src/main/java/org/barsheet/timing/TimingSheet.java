package org.barsheet.timing;

import java.util.List;
import java.util.Optional;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmClock;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;
import org.barsheet.pulse.Music;

/**
 * Every panel on its frames.
 *
 * @param plan what was asked
 * @param music what it is laid on
 * @param clock ties the two
 * @param bars in order
 * @param tempo what there is to say of tempo
 * @param cues every return of every motif, every mark, and every other cue a panel sits on, in
 *     order of time
 * @param shots in story order, without gaps, from film frame 0
 * @param lengthFrames of the film
 * @param tallies one a motif, in the plan's order
 * @param findings about the music and the placing, worst first
 */
public record TimingSheet(
    Plan plan,
    Music music,
    FilmClock clock,
    List<FilmBar> bars,
    TempoReport tempo,
    List<Cue> cues,
    List<Shot> shots,
    long lengthFrames,
    List<MotifTally> tallies,
    List<Finding> findings) {

  public TimingSheet {
    bars = List.copyOf(bars);
    cues = List.copyOf(cues);
    shots = List.copyOf(shots);
    tallies = List.copyOf(tallies);
    findings = List.copyOf(findings);
  }

  /** The same panels on the same frames, of a plan with more known about its performers. */
  public TimingSheet with(List<Performer> performers) {
    return new TimingSheet(
        plan.with(performers),
        music,
        clock,
        bars,
        tempo,
        cues,
        shots,
        lengthFrames,
        tallies,
        findings);
  }

  /** The shot that shows a film frame, if the film has that frame. */
  public Optional<Shot> shotAt(long frame) {
    int low = 0;
    int high = shots.size() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      Shot shot = shots.get(middle);
      if (shot.frames().contains(frame)) {
        return Optional.of(shot);
      }
      if (shot.frames().start() > frame) {
        high = middle - 1;
      } else {
        low = middle + 1;
      }
    }
    return Optional.empty();
  }
}
