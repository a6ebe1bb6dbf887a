package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.SheetNote;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** What is written beside the frames of a sample film. */
final class SampleNotes {

  private SampleNotes() {}

  /** Every beat, cut and reveal, and some more. */
  static List<SheetNote> of(TimingSheet timing, List<PlannedReveal> reveals, List<SheetNote> more) {
    List<SheetNote> notes = new ArrayList<>(more);
    for (FilmBar bar : timing.bars()) {
      for (int beat = 0; beat < bar.bar().beatTicks().size(); beat++) {
        long tick = bar.bar().beatTicks().get(beat);
        String text =
            beat == 0 ? "bar " + bar.bar().number() : bar.bar().number() + "·" + (beat + 1);
        long frame = timing.clock().frameAt(timing.music().tempo().secondsAt(tick));
        notes.add(new SheetNote(frame, SheetNote.Column.BEAT, "", false, text));
      }
    }
    for (Shot shot : timing.shots()) {
      notes.add(
          new SheetNote(
              shot.frames().start(), SheetNote.Column.ACTION, "", false, shot.panel().action()));
    }
    for (PlannedReveal reveal : reveals) {
      notes.add(new SheetNote(reveal.accentFrame(), SheetNote.Column.SOUND, "A", true, "G6"));
      notes.add(
          new SheetNote(reveal.firstGapFrame(), SheetNote.Column.ACTION, "", false, "first gap"));
      notes.add(
          new SheetNote(
              reveal.landsFrame(),
              SheetNote.Column.ACTION,
              "",
              true,
              reveal.opening().name() + " fully open"));
    }
    notes.sort(Comparator.comparingLong(SheetNote::frame).thenComparing(SheetNote::column));
    return notes;
  }
}
