package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Bar;
import org.barsheet.score.Mark;

/**
 * Bars between two marks, or from one meter to the next, with the constant tempo that would take as
 * long.
 *
 * @param name what the mark says that begins it, or ""
 * @param first first bar
 * @param last last bar
 * @param start when the first bar begins
 * @param beats felt beats from there to the end of the last bar
 * @param steadyBeat how long every beat would last at a constant tempo
 */
public record Section(
    String name, Bar first, Bar last, Seconds start, int beats, Seconds steadyBeat) {

  /** The sections of a piece, in order. */
  public static List<Section> of(Music music) {
    List<Bar> bars = music.bars().bars();
    TreeSet<Integer> starts = new TreeSet<>(List.of(0));
    for (Bar bar : bars.subList(1, bars.size())) {
      if (!bar.meter().equals(bars.get(bar.index() - 1).meter()) || !nameOf(music, bar).isEmpty()) {
        starts.add(bar.index());
      }
    }
    List<Section> sections = new ArrayList<>();
    for (int start : starts) {
      Integer next = starts.higher(start);
      int last = (next == null ? bars.size() : next) - 1;
      sections.add(section(music, bars.get(start), bars.get(last)));
    }
    return sections;
  }

  private static String nameOf(Music music, Bar bar) {
    return music.score().marks().stream()
        .filter(mark -> bar.contains(mark.tick()))
        .map(Mark::text)
        .findFirst()
        .orElse("");
  }

  private static Section section(Music music, Bar first, Bar last) {
    int beats =
        music.bars().bars().subList(first.index(), last.index() + 1).stream()
            .mapToInt(bar -> bar.beatTicks().size())
            .sum();
    Seconds start = music.tempo().secondsAt(first.startTick());
    Seconds length = music.tempo().secondsAt(last.endTick()).minus(start);
    Seconds beat = length.times(BigFraction.of(1, beats));
    return new Section(nameOf(music, first), first, last, start, beats, beat);
  }

  /**
   * How much later a bar of this section begins than it would at the constant tempo; negative if
   * earlier.
   */
  public Seconds drift(Music music, Bar bar) {
    int before =
        music.bars().bars().subList(first.index(), bar.index()).stream()
            .mapToInt(one -> one.beatTicks().size())
            .sum();
    return music.tempo().secondsAt(bar.startTick()).minus(start.plus(steadyBeat.times(before)));
  }
}
