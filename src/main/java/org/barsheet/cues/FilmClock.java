package org.barsheet.cues;

import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Film;
import org.barsheet.plan.Film.MusicFrom;
import org.barsheet.plan.Recording;
import org.barsheet.pulse.Music;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * Ties the music to the film. The music's start is put on a whole frame, because editors lay sound
 * on frames, and everything in the music is measured from that frame's exact time.
 *
 * @param rate of the film
 * @param musicStartFrame film frame on which the music starts
 * @param musicStart what the music's start is in the score: its time from tick 0
 */
public record FilmClock(FrameRate rate, long musicStartFrame, Seconds musicStart) {

  /**
   * The clock of a film: its music starts on the whole frame nearest to {@code music-starts}.
   *
   * @param firstNote onset of the first note, from tick 0; counts where the music is measured from
   *     its first note
   */
  public static FilmClock of(Film film, Seconds firstNote) {
    Seconds start = film.musicFrom() == MusicFrom.FIRST_NOTE ? firstNote : Seconds.ZERO;
    return new FilmClock(film.rate(), film.musicStartFrame(), start);
  }

  /** The clock of a film and its music. */
  public static FilmClock of(Film film, Music music) {
    return of(film, music.score(), music.tempo());
  }

  /** The clock of a film whose music follows a tempo. */
  public static FilmClock of(Film film, Score score, TempoMap tempo) {
    long firstTick = score.notes().isEmpty() ? 0 : score.notes().get(0).onTick();
    return of(film, tempo.secondsAt(firstTick));
  }

  /** The film frame nearest to a moment of the score; a tie goes to the later frame. */
  public long frameAt(Seconds fromTick0) {
    return rate.nearestFrame(filmTime(fromTick0));
  }

  /** Exact time in the film, from film frame 0, of a moment of the score. */
  public Seconds filmTime(Seconds fromTick0) {
    return rate.startOf(musicStartFrame).plus(fromTick0.minus(musicStart));
  }

  /** Exact time in the film, from film frame 0, of a recording's first sample. */
  public Seconds startOf(Recording recording) {
    return recording.starts().orElse(filmTime(Seconds.ZERO));
  }

  /** The moment of the score, from tick 0, that sounds as a film frame begins. */
  public Seconds scoreTime(long frame) {
    return rate.startOf(frame).minus(rate.startOf(musicStartFrame)).plus(musicStart);
  }
}
