package org.barsheet.pulse.free;

import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.evidence.Playing;
import org.barsheet.pulse.evidence.StrokeStrength;

/** Searches a playing for beats, and for bars of so many beats that begin at pinned times. */
public final class BeatSearch {

  /** How far from the usual beat length the later searches look. */
  public static final double WIDE = 2;

  /** The same where another level of the beat must not slip in. */
  private static final double NARROW = 1.4;

  private final Playing playing;
  private final double[] beatStrengths;
  private final double[] barStrengths;
  private final List<Integer> pinned;

  public BeatSearch(Playing playing, List<Seconds> pinTimes) {
    this.playing = playing;
    this.beatStrengths = StrokeStrength.ofBeats(playing);
    this.barStrengths = StrokeStrength.ofBars(playing);
    this.pinned = pinTimes.stream().map(pin -> BeatFit.frame(pin.toDouble())).toList();
  }

  /** How well beats of some lengths, divided in a way, fit the playing. */
  public BeatFit fit(BeatLengths lengths, BeatDivision division) {
    return new BeatFit(playing, beatStrengths, barStrengths, lengths, division);
  }

  /** The beats that fit best, so many to a bar. */
  public FoundBeats of(BeatFit fit, int beatsInBar) {
    int first = BeatFit.frame(playing.strokes().get(0).seconds());
    int last = BeatFit.frame(playing.endSeconds());
    List<Integer> reached = pinned.stream().filter(frame -> frame < fit.frames()).toList();
    return new BarSearch(fit, beatsInBar, first, last, reached).search();
  }

  /** How well the best beats of about one length fit, bars left aside. */
  public double totalNear(double beatSeconds, BeatDivision division) {
    return of(fit(BeatLengths.usual().near(beatSeconds, NARROW), division), 1).total();
  }

  /** How the playing divides beats that were found. */
  public BeatDivision learnt(BeatDivision open, FoundBeats beats) {
    return open.learntFrom(playing, beatStrengths, beats.seconds());
  }
}
