package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * A score together with the time and the bars that the film follows.
 *
 * @param score the notes
 * @param tempo exact time of every tick, from the music's start: tick 0, or with pins the first
 *     sample of the recording
 * @param bars the bars counted by
 * @param pickup whether the first bar is a pickup
 * @param source where tempo and bars come from
 * @param evidence how true the written tempo looks
 * @param sentence which was used, why, and how sure that is
 * @param doubts what a person should look at
 */
public record Music(
    Score score,
    TempoMap tempo,
    BarGrid bars,
    boolean pickup,
    Source source,
    TempoEvidence evidence,
    String sentence,
    List<Doubt> doubts) {

  public Music {
    doubts = List.copyOf(doubts);
  }

  /** Music about which nothing is doubtful; a first bar numbered 0 is a pickup. */
  public Music(
      Score score,
      TempoMap tempo,
      BarGrid bars,
      Source source,
      TempoEvidence evidence,
      String sentence) {
    this(score, tempo, bars, bars.first().number() == 0, source, evidence, sentence, List.of());
  }

  /** Where tempo and bars come from. */
  public enum Source {
    /** As written in the file. */
    WRITTEN,
    /** Found in the playing. */
    PLAYED,
    /** As written, bent to pinned times of a recording. */
    PINNED
  }

  /** The same music, told of in another sentence. */
  Music withSentence(String other) {
    return new Music(score, tempo, bars, pickup, source, evidence, other, doubts);
  }

  /** The same music with one more doubt. */
  Music withDoubt(Doubt doubt) {
    List<Doubt> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new Music(score, tempo, bars, pickup, source, evidence, sentence, more);
  }

  /**
   * Whether the notes keep to the written beats so loosely that ticks say little of note values.
   */
  public boolean isFreelyPlayed() {
    return switch (evidence.verdict()) {
      case TRUE -> false;
      case MIXED, UNTRUE -> true;
      case NONE -> source == Source.PLAYED;
    };
  }

  /** When the last bar in which a note sounds ends, or the last bar of all where none does. */
  public Seconds lastSoundingBarEnd() {
    Bar last = score.endTick() == 0 ? bars.last() : bars.barAt(score.endTick() - 1);
    return tempo.secondsAt(last.endTick());
  }

  /** Every felt beat in the order played. */
  public List<Beat> beats() {
    List<Beat> beats = new ArrayList<>();
    for (Bar bar : bars.bars()) {
      for (int i = 0; i < bar.beatTicks().size(); i++) {
        beats.add(beat(bar, i + 1));
      }
    }
    return beats;
  }

  /** The first beats of the first bars, for a person to confirm; a pickup is no downbeat. */
  public List<Beat> firstDownbeats(int count) {
    return bars.bars().stream()
        .filter(bar -> bar.index() > 0 || !pickup)
        .limit(count)
        .map(bar -> beat(bar, 1))
        .toList();
  }

  private Beat beat(Bar bar, int number) {
    long tick = bar.beatTicks().get(number - 1);
    BigFraction quarter = BigFraction.of(tick).divide(score.ticksPerQuarter());
    return new Beat(bar, number, tick, quarter, tempo.secondsAt(tick));
  }
}
