package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.Reading.Kind;
import org.barsheet.pulse.TempoRequest.Mode;
import org.barsheet.pulse.TempoRequest.Pin;
import org.barsheet.score.Bar;
import org.barsheet.score.Score;

/** The ways to hear a score: the one that is followed and its alternatives. */
public final class Readings {

  /** Felt bpm that a alternative may have. */
  private static final int SLOWEST = 30;

  private static final int FASTEST = 240;

  private final Score score;
  private final TempoRequest request;
  private final Music followed;
  private final List<Reading> readings = new ArrayList<>();

  private Readings(Score score, TempoRequest request) {
    this.score = score;
    this.request = request;
    this.followed = MusicFinder.follow(score, request);
  }

  /**
   * The reading that is followed, then its alternatives: the beat half and twice as fast, bars that
   * begin on another beat, the written bars where playing is followed, and the playing where a
   * written tempo is followed that the notes do not sit on.
   *
   * @throws org.barsheet.input.InputException as {@link MusicFinder#follow} does
   */
  public static List<Reading> of(Score score, TempoRequest request) {
    return new Readings(score, request).all();
  }

  private List<Reading> all() {
    readings.add(new Reading(Kind.FOLLOWED, 0, request, followed));
    if (followed.source() == Music.Source.PLAYED) {
      addLevel(Kind.HALF_AS_FAST, BigFraction.of(1, 2));
      addLevel(Kind.TWICE_AS_FAST, BigFraction.of(2));
      if (request.pins().isEmpty()) {
        addLater();
        add(Kind.AS_WRITTEN, 0, request.withTempo(Mode.WRITTEN));
      }
    } else if (followed.evidence().verdict() != TempoEvidence.Verdict.TRUE) {
      add(Kind.AS_PLAYED, 0, request.withTempo(Mode.PLAYED));
    }
    return List.copyOf(readings);
  }

  /** A reading counts where it is heard as asked, and is none of those before. */
  private void add(Kind kind, int beatsLater, TempoRequest asked) {
    Music music = MusicFinder.follow(score, asked);
    boolean asAsked = (kind != Kind.AS_WRITTEN) == (music.source() == Music.Source.PLAYED);
    List<Beat> beats = music.beats();
    if (asAsked && readings.stream().noneMatch(known -> known.music().beats().equals(beats))) {
      readings.add(new Reading(kind, beatsLater, asked, music));
    }
  }

  private void addLevel(Kind kind, BigFraction faster) {
    double perMinute = beatsPerMinute(followed).multiply(faster).doubleValue();
    BigFraction asked = BigFraction.of(Math.round(10 * perMinute)).divide(10);
    if (asked.doubleValue() >= SLOWEST && asked.doubleValue() <= FASTEST) {
      add(kind, 0, request.withTempo(Mode.PLAYED).withBeatsPerMinute(asked));
    }
  }

  /** Bars that begin with the second, third … beat of the first full bar. */
  private void addLater() {
    int size = MusicFinder.usualSize(followed.bars());
    Bar first =
        followed.bars().bars().stream()
            .filter(bar -> bar.number() > 0 && bar.beatTicks().size() == size)
            .findFirst()
            .orElseThrow();
    for (int later = 1; later < size; later++) {
      Seconds at = followed.tempo().secondsAt(first.beatTicks().get(later));
      Pin pin = new Pin(first.number(), Seconds.parse(at.toDecimal(3).toPlainString()));
      add(Kind.LATER, later, request.withTempo(Mode.PLAYED).withPins(List.of(pin)));
    }
  }

  /** Felt bpm in the middle of all beats of a piece in order of length. */
  public static BigFraction beatsPerMinute(Music music) {
    List<Beat> beats = music.beats();
    if (beats.size() < 2) {
      Seconds quarter = music.tempo().perQuarterAt(0);
      return Seconds.of(60)
          .dividedBy(quarter.times(music.bars().first().meter().feltBeatQuarters()));
    }
    List<Seconds> lengths = new ArrayList<>();
    for (int i = 1; i < beats.size(); i++) {
      lengths.add(beats.get(i).seconds().minus(beats.get(i - 1).seconds()));
    }
    lengths.sort(Comparator.naturalOrder());
    return Seconds.of(60).dividedBy(lengths.get(lengths.size() / 2));
  }
}
