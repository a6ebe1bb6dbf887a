package org.barsheet.film;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBeat;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.SheetNote.Column;
import org.barsheet.motif.Notes;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.timing.MotifTally;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** What is written beside the frames: beats, what sounds, what happens. */
final class SheetNotes {

  private final TimingSheet timing;
  private final MusicRuler ruler;
  private final List<PlannedReveal> reveals;
  private final Map<String, String> signs = new HashMap<>();
  private final List<SheetNote> notes = new ArrayList<>();

  SheetNotes(TimingSheet timing, MusicRuler ruler, List<PlannedReveal> reveals) {
    this.timing = timing;
    this.ruler = ruler;
    this.reveals = reveals;
    for (MotifTally tally : timing.tallies()) {
      signs.put(tally.motif(), tally.sign());
    }
  }

  /** All notes within the film, in order of frame and column. */
  List<SheetNote> all() {
    ruler.beatsBetween(0, timing.lengthFrames() - 1).forEach(this::addBeat);
    timing.cues().forEach(this::addSound);
    timing.shots().forEach(this::addShot);
    reveals.forEach(this::addReveal);
    notes.removeIf(note -> note.frame() < 0 || note.frame() >= timing.lengthFrames());
    notes.sort(Comparator.comparingLong(SheetNote::frame).thenComparing(SheetNote::column));
    return List.copyOf(notes);
  }

  private void addBeat(FilmBeat beat) {
    String text =
        beat.place().isDownbeat() ? "bar " + beat.place().bar() : "beat " + beat.place().beatText();
    notes.add(new SheetNote(beat.frame(), Column.BEAT, "", false, text));
  }

  private void addSound(Cue cue) {
    if (cue.kind() == Cue.Kind.MARK) {
      notes.add(new SheetNote(cue.frame(), Column.SOUND, "", false, cue.title()));
    }
    cue.occurrence().filter(o -> o.number() > 0).ifPresent(o -> addMotif(cue, o));
  }

  private void addMotif(Cue cue, Occurrence occurrence) {
    String sign = signs.getOrDefault(cue.name(), "");
    for (int i = 0; i < occurrence.notes().ticks().size(); i++) {
      int pitch = occurrence.notes().pitches().get(i);
      if (pitch >= 0) {
        boolean accent =
            occurrence.notes().ticks().get(i).longValue() == occurrence.notes().accentTick();
        String name = Notes.name(pitch);
        String text =
            accent ? cue.title() + " accent, " + name : i == 0 ? cue.title() + ", " + name : name;
        long frame = ruler.frameOf(occurrence.notes().ticks().get(i));
        notes.add(new SheetNote(frame, Column.SOUND, sign, accent, text));
      }
    }
  }

  private void addShot(Shot shot) {
    addAction(shot.frames().start(), "cut to panel " + shot.panel().name());
  }

  private void addReveal(PlannedReveal reveal) {
    String name = reveal.opening().name();
    boolean opens = reveal.reveal().way() == Way.OPENS;
    Shot shot = timing.shots().get(reveal.shot());
    if (reveal.exposures().get(0).frames().start() < reveal.firstGapFrame()) {
      addAction(
          reveal.exposures().get(0).frames().start(),
          "hold " + name + (opens ? " closed" : " open"));
    }
    addAction(reveal.firstGapFrame(), name + (opens ? " opens" : " closes"));
    if (reveal.landsFrame() != reveal.firstGapFrame()
        && reveal.landsFrame() != reveal.fullyOpenFrame()) {
      addAction(reveal.landsFrame(), name + " " + reveal.landing());
    }
    if (reveal.fullyOpenFrame() < shot.frames().endExclusive()) {
      addAction(
          reveal.fullyOpenFrame(), name + (opens ? " fully open, " : " closed, ") + after(reveal));
    }
  }

  private static String after(PlannedReveal reveal) {
    return reveal
        .reveal()
        .cycle()
        .map(
            cycle ->
                "repeat "
                    + cycle.first()
                    + " to "
                    + cycle.last()
                    + (cycle.toAndFro() ? " to and fro" : ""))
        .orElse("hold");
  }

  private void addAction(long frame, String text) {
    notes.add(new SheetNote(frame, Column.ACTION, "", false, text));
  }
}
