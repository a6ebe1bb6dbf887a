package org.barsheet.score;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.score.ChunkWalker.Walk;

/**
 * Reads a Standard MIDI File into a {@link Score}.
 *
 * <p>Nothing is lost silently: what the file announces and does not hold becomes a {@link
 * ReadingNote} with its byte offset, or an error. Limits: 64 MB, four million events, one million
 * notes, one million felt beats.
 */
public final class ScoreReader {

  private ScoreReader() {}

  /**
   * Reads a score.
   *
   * @throws org.barsheet.input.InputException if the file cannot be read, is no MIDI file, holds no
   *     track, holds patterns without a common time (format 2), or exceeds a limit
   */
  public static Score read(Path path) {
    ScoreFile file = ScoreFile.read(path);
    ReadingNotes readingNotes = new ReadingNotes();
    Walk walk = ChunkWalker.walk(file, readingNotes);
    List<TrackNormalizer.Track> tracks =
        TrackNormalizer.normalizeAll(file, walk.tracks(), readingNotes);
    ScoreEvents events = new ScoreEvents(file, readingNotes);
    int factor = WrittenTempo.ticksFactor(walk.division());
    EventDecoder.decode(file, walk.rawDivision(), tracks, factor, events);
    events.finish();
    return score(file, walk, events, readingNotes);
  }

  private static Score score(
      ScoreFile file, Walk walk, ScoreEvents events, ReadingNotes readingNotes) {
    int ticksPerQuarter = WrittenTempo.ticksPerQuarter(walk.division());
    PartList parts = PartList.of(events);
    List<Note> notes = parts.notes();
    long endTick = notes.stream().mapToLong(Note::offTick).max().orElse(0);
    long lastOnset = notes.isEmpty() ? 0 : notes.get(notes.size() - 1).onTick();
    long lastTick = Math.max(lastOnset, endTick - 1);
    BarGrid bars = WrittenBars.grid(file, events.meters(), ticksPerQuarter, lastTick, readingNotes);
    return new Score(
        walk.format(),
        walk.division(),
        ticksPerQuarter,
        parts.parts(),
        notes,
        events.marks(),
        events.pedalTicks(),
        WrittenTempo.map(walk.division(), ticksPerQuarter, events.tempos()),
        events.tempos().size(),
        events.meters().size(),
        bars,
        endTick,
        readingNotes.inOrder());
  }
}
