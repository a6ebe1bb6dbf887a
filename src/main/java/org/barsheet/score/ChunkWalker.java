package org.barsheet.score;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.FrameRate;

/**
 * Walks the chunks of a Standard MIDI File (MIDI Manufacturers Association, RP-001) and holds every
 * announced length against the bytes that are there. A RIFF RMID wrapper is opened; unknown chunks
 * are passed over, as the standard asks.
 */
final class ChunkWalker {

  /** Most tracks of one file; more than {@code javax.sound.midi} counts are lost without a word. */
  private static final int MOST_TRACKS = 10_000;

  private static final String EXPORT_AGAIN = "export the score again as a Standard MIDI File";

  private final ScoreFile file;
  private final ReadingNotes notes;
  private final List<TrackChunk> tracks = new ArrayList<>();

  /**
   * What the chunks say.
   *
   * @param format 0 or 1
   * @param rawDivision the division as the header spells it
   * @param division what ticks count
   * @param tracks in file order, at least one
   */
  record Walk(int format, int rawDivision, Division division, List<TrackChunk> tracks) {}

  /**
   * The bytes of one track.
   *
   * @param number from 0
   * @param start offset of its first event
   * @param end offset after its last byte
   */
  record TrackChunk(int number, int start, int end) {}

  private ChunkWalker(ScoreFile file, ReadingNotes notes) {
    this.file = file;
    this.notes = notes;
  }

  /**
   * Finds header and tracks.
   *
   * @throws org.barsheet.input.InputException if it is no MIDI file, or one whose time cannot be
   *     known
   */
  static Walk walk(ScoreFile file, ReadingNotes notes) {
    return new ChunkWalker(file, notes).walk();
  }

  private Walk walk() {
    int header = headerOffset();
    if (header + 14 > file.length()) {
      throw file.refused(file.length(), "the file ends inside its header", EXPORT_AGAIN);
    }
    long headerLength = file.unsignedInt(header + 4);
    if (headerLength < 6 || header + 8 + headerLength > file.length()) {
      throw file.refused(
          header + 4, "a header of " + headerLength + " bytes cannot be read", EXPORT_AGAIN);
    }
    int announced = file.unsignedShort(header + 10);
    int rawDivision = file.unsignedShort(header + 12);
    Division division = division(header + 12, rawDivision);
    findTracks(header + 8 + (int) headerLength);
    checkCount(header + 10, announced);
    return new Walk(format(header + 8), rawDivision, division, List.copyOf(tracks));
  }

  private int headerOffset() {
    if (file.says(0, "MThd")) {
      return 0;
    }
    if (file.says(0, "RIFF") && file.says(8, "RMID")) {
      return wrappedHeader();
    }
    throw file.refused(
        0,
        "this is not a MIDI file: it doesn't begin with 'MThd'",
        "name a Standard MIDI File (.mid); an audio file cannot be read");
  }

  private int wrappedHeader() {
    long at = 12;
    while (at + 8 <= file.length()) {
      if (file.says((int) at, "data") && file.says((int) at + 8, "MThd")) {
        return (int) at + 8;
      }
      long length = file.unsignedIntLittleEndian((int) at + 4);
      at += 8 + length + length % 2;
    }
    throw file.refused(12, "the RIFF wrapper holds no MIDI file", EXPORT_AGAIN);
  }

  private Division division(int offset, int raw) {
    if (raw == 0) {
      throw file.refused(
          offset, "the header says 0 ticks per quarter note, so nothing has a time", EXPORT_AGAIN);
    }
    if (raw < 0x8000) {
      return new Division.PerQuarter(raw);
    }
    int framesPerSecond = -(byte) (raw >> 8);
    int ticks = raw & 0xFF;
    FrameRate rate =
        switch (framesPerSecond) {
          case 24 -> FrameRate.FPS_24;
          case 25 -> FrameRate.FPS_25;
          case 29 -> FrameRate.FPS_29_97_DF;
          case 30 -> FrameRate.FPS_30;
          default ->
              throw file.refused(
                  offset,
                  "the header says " + framesPerSecond + " fps; it can be 24, 25, 29 or 30",
                  EXPORT_AGAIN);
        };
    if (ticks == 0) {
      throw file.refused(offset, "the header says 0 ticks per frame", EXPORT_AGAIN);
    }
    return new Division.PerFrame(rate, ticks);
  }

  private void findTracks(int from) {
    int at = from;
    while (at < file.length()) {
      boolean whole = at + 8 <= file.length();
      long length = whole ? file.unsignedInt(at + 4) : 0;
      if (whole && file.says(at, "MTrk")) {
        at = addTrack(at, length);
      } else if (whole && isChunkName(at) && at + 8 + length <= file.length()) {
        at += 8 + (int) length;
      } else {
        at = skipStrayBytes(at);
      }
    }
  }

  private int addTrack(int at, long length) {
    int start = at + 8;
    long end = start + length;
    int number = tracks.size();
    if (end > file.length()) {
      notes.addLoss(
          at,
          "track "
              + (number + 1)
              + " should have "
              + length
              + " bytes, but the file ends after "
              + (file.length() - start)
              + "; what's there is used");
      end = nextTrack(start);
    }
    tracks.add(new TrackChunk(number, start, (int) end));
    return (int) end;
  }

  private boolean isChunkName(int at) {
    for (int i = at; i < at + 4; i++) {
      if (file.unsignedByte(i) < 0x20 || file.unsignedByte(i) > 0x7E) {
        return false;
      }
    }
    return true;
  }

  private int skipStrayBytes(int at) {
    int next = nextTrack(at + 1);
    int count = next - at;
    String sentence = count == 1 ? "1 stray byte is left out" : count + " stray bytes are left out";
    if (isPadding(at, next)) {
      notes.add(at, sentence);
    } else {
      notes.addLoss(at, sentence);
    }
    return next;
  }

  /** Some programs fill a file up with zeros or end it with an empty line. */
  private boolean isPadding(int from, int to) {
    for (int at = from; at < to; at++) {
      int value = file.unsignedByte(at);
      if (value != 0 && value != '\r' && value != '\n') {
        return false;
      }
    }
    return true;
  }

  /** Where the next track chunk begins, or the end of the file. */
  private int nextTrack(int from) {
    int at = from;
    while (at < file.length() && !file.says(at, "MTrk")) {
      at++;
    }
    return at;
  }

  private void checkCount(int offset, int announced) {
    if (tracks.isEmpty()) {
      throw file.refused(offset, "the file has no tracks", EXPORT_AGAIN);
    }
    if (tracks.size() > MOST_TRACKS) {
      throw file.refused(
          offset, "the file holds more than " + MOST_TRACKS + " tracks", "export a shorter part");
    }
    if (announced != tracks.size()) {
      notes.add(
          offset,
          "the header says "
              + announced
              + (announced == 1 ? " track" : " tracks")
              + ", but the file has "
              + tracks.size()
              + "; all are read");
    }
  }

  private int format(int offset) {
    int format = file.unsignedShort(offset);
    boolean single = tracks.size() == 1;
    if (format == 2 && !single) {
      throw file.refused(
          offset,
          "format 2 holds " + tracks.size() + " separate patterns, not one piece of music",
          "export the arrangement as format 1");
    }
    if (format > 1) {
      notes.add(offset, "format " + format + " is read as if it were format 1");
    } else if (format == 0 && !single) {
      notes.add(
          offset, "format 0 means one track, but the file has " + tracks.size() + "; all are read");
    }
    return format == 0 && single ? 0 : 1;
  }
}
