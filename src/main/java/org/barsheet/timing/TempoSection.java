package org.barsheet.timing;

import java.math.BigDecimal;
import java.util.List;
import org.barsheet.clock.FramesPerBeat;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmBar;
import org.barsheet.pulse.TempoAdvice;

/**
 * Bars between two marks, or from one meter to the next, against the one constant tempo that would
 * take as long.
 *
 * @param name what the mark says that begins it, or ""
 * @param first its first bar
 * @param last its last bar
 * @param beats felt beats in it
 * @param framesPerBeat the constant tempo in frames and eighths, the nearest
 * @param beatsPerMinute the constant tempo in felt bpm, to three decimals
 * @param mostDrift how much later a bar begins than it would at the constant tempo, at the bar that
 *     strays most; negative if earlier
 * @param barsOnPhotographs how many of its bar lines would fall on a frame where a photograph can
 *     begin at the constant tempo, the first one on one
 * @param bars how many bars it has, a short first one left out unless it is the only one
 * @param better nearby tempos with more bar lines on such frames, the best first, three at most;
 *     none where the tempo is a recording's, which stands
 */
public record TempoSection(
    String name,
    FilmBar first,
    FilmBar last,
    int beats,
    FramesPerBeat framesPerBeat,
    BigDecimal beatsPerMinute,
    Seconds mostDrift,
    int barsOnPhotographs,
    int bars,
    List<TempoAdvice> better) {

  public TempoSection {
    better = List.copyOf(better);
  }
}
