package org.barsheet.workbook;

import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.motif.Occurrence;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** What lies over and under the bars of the music, found by frames. */
final class MusicSpans {

  private final TimingSheet timing;
  private final Overlaps<Shot> shots;
  private final Overlaps<Cue> occurrences;
  private final Overlaps<PlannedReveal> reveals;

  MusicSpans(FilmSheet film) {
    this.timing = film.timing();
    this.shots = new Overlaps<>(timing.shots(), timing.shots().stream().map(Shot::frames).toList());
    List<Cue> counted = timing.cues().stream().filter(MusicSpans::isCounted).toList();
    this.occurrences = new Overlaps<>(counted, counted.stream().map(this::sounding).toList());
    this.reveals =
        new Overlaps<>(film.reveals(), film.reveals().stream().map(MusicSpans::moving).toList());
  }

  private static boolean isCounted(Cue cue) {
    return cue.occurrence().filter(occurrence -> occurrence.number() > 0).isPresent();
  }

  private FrameSpan sounding(Cue cue) {
    Occurrence occurrence = cue.occurrence().orElseThrow();
    long start = frameAt(occurrence.startTick());
    return new FrameSpan(start, Math.max(start + 1, frameAt(occurrence.notes().endTick())));
  }

  private long frameAt(long tick) {
    return timing.clock().frameAt(timing.music().tempo().secondsAt(tick));
  }

  /** From its first gap to its landing. */
  private static FrameSpan moving(PlannedReveal reveal) {
    return new FrameSpan(reveal.firstGapFrame(), reveal.landsFrame() + 1);
  }

  /** The shots, in story order. */
  Overlaps<Shot> shots() {
    return shots;
  }

  /** The counted returns of the motifs, from their first note to the end of their last. */
  Overlaps<Cue> occurrences() {
    return occurrences;
  }

  /** The reveals from their first gap to their landing. */
  Overlaps<PlannedReveal> reveals() {
    return reveals;
  }
}
