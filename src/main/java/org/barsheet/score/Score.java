package org.barsheet.score;

import java.util.ArrayList;
import java.util.List;

/**
 * The music as written in a MIDI file.
 *
 * <p>Ticks are finer than the file's where that keeps every beat of every meter on a whole tick:
 * the file's ticks times a whole number, so that {@code ticksPerQuarter} is a multiple of 32. With
 * a division of real time a "quarter note" is nominally half a second.
 *
 * @param format Standard MIDI File format, 0 or 1
 * @param division what the file's own ticks count
 * @param ticksPerQuarter ticks of this score to the quarter note
 * @param parts in order of track and channel
 * @param notes of all parts, in order of onset, then part, then pitch
 * @param marks in order of tick
 * @param pedalTicks where the damper pedal of any part goes down, in order
 * @param tempo exact time of every tick as written
 * @param tempoEvents how many tempo events the file holds
 * @param meterEvents how many time signatures the file holds
 * @param bars as written
 * @param endTick where the last note ends
 * @param readingNotes what was odd in the file, in order of place
 */
public record Score(
    int format,
    Division division,
    int ticksPerQuarter,
    List<Part> parts,
    List<Note> notes,
    List<Mark> marks,
    List<Long> pedalTicks,
    TempoMap tempo,
    int tempoEvents,
    int meterEvents,
    BarGrid bars,
    long endTick,
    List<ReadingNote> readingNotes) {

  public Score {
    parts = List.copyOf(parts);
    notes = List.copyOf(notes);
    marks = List.copyOf(marks);
    pedalTicks = List.copyOf(pedalTicks);
    readingNotes = List.copyOf(readingNotes);
  }

  /** The same score with some of its notes only. */
  public Score withNotes(List<Note> some) {
    long end = some.stream().mapToLong(Note::offTick).max().orElse(0);
    return with(some, tempo, end);
  }

  /** The same score, played by another tempo map. */
  public Score withTempo(TempoMap other) {
    return with(notes, other, endTick);
  }

  private Score with(List<Note> otherNotes, TempoMap otherTempo, long otherEnd) {
    return new Score(
        format,
        division,
        ticksPerQuarter,
        parts,
        otherNotes,
        marks,
        pedalTicks,
        otherTempo,
        tempoEvents,
        meterEvents,
        bars,
        otherEnd,
        readingNotes);
  }

  /** The notes of one part, in order. */
  public List<Note> notesOf(Part part) {
    return notes.stream().filter(note -> note.part() == part.index()).toList();
  }

  /** The notes of each part, in order; one look through all notes however many parts there are. */
  public List<List<Note>> notesByPart() {
    List<List<Note>> byPart = new ArrayList<>();
    parts.forEach(part -> byPart.add(new ArrayList<>()));
    for (Note note : notes) {
      byPart.get(note.part()).add(note);
    }
    return byPart;
  }
}
