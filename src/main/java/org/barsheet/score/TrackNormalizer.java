package org.barsheet.score;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.barsheet.score.ChunkWalker.TrackChunk;

/**
 * Writes the events of one track anew, so that any reader takes them the same way: every status
 * byte explicit, only events a score needs, an end of track last. Remembers where each came from.
 *
 * <p>Running status is kept across meta events although the standard cancels it there: many files
 * rely on that, and nothing else such a byte could mean.
 */
final class TrackNormalizer {

  /** Most events that are read in one file. */
  static final int MOST_EVENTS = 4_000_000;

  /**
   * Controller 64, "damper pedal on/off (sustain): 63 and below off, 64 and above on" (MIDI 1.0).
   */
  static final int DAMPER_PEDAL = 64;

  private static final int META = 0xFF;
  private static final int END_OF_TRACK = 0x2F;
  private static final int[] DATA_BYTES = {2, 2, 2, 2, 1, 1, 2};

  private final ScoreFile file;
  private final TrackChunk chunk;
  private final ReadingNotes notes;
  private final int eventsLeft;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private int[] offsets = new int[64];
  private int count;
  private int at;
  private long pendingTicks;
  private int runningStatus;

  /**
   * A track written anew.
   *
   * @param number from 0
   * @param bytes its events
   * @param offsets byte offset in the file of each event, in order, the end of track last
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
  record Track(int number, byte[] bytes, int[] offsets) {}

  /** The track stops making sense at a byte. */
  private static final class Damage extends Exception {
    private static final long serialVersionUID = 1L;
    private final int offset;

    Damage(int offset, String what) {
      super(what, null, false, false);
      this.offset = offset;
    }
  }

  private TrackNormalizer(ScoreFile file, TrackChunk chunk, ReadingNotes notes, int eventsLeft) {
    this.file = file;
    this.chunk = chunk;
    this.notes = notes;
    this.eventsLeft = eventsLeft;
    this.at = chunk.start();
  }

  /** Writes every track of a file anew. */
  static List<Track> normalizeAll(ScoreFile file, List<TrackChunk> chunks, ReadingNotes notes) {
    List<Track> tracks = new ArrayList<>(chunks.size());
    int eventsLeft = MOST_EVENTS;
    for (TrackChunk chunk : chunks) {
      Track track = normalize(file, chunk, notes, eventsLeft);
      eventsLeft -= track.offsets().length;
      tracks.add(track);
    }
    return tracks;
  }

  private static Track normalize(
      ScoreFile file, TrackChunk chunk, ReadingNotes notes, int eventsLeft) {
    TrackNormalizer normalizer = new TrackNormalizer(file, chunk, notes, eventsLeft);
    normalizer.readAll();
    return new Track(
        chunk.number(),
        normalizer.out.toByteArray(),
        Arrays.copyOf(normalizer.offsets, normalizer.count));
  }

  private void readAll() {
    try {
      boolean ended = false;
      while (!ended && at < chunk.end()) {
        ended = readEvent();
      }
      noteEnd(ended);
    } catch (Damage damage) {
      noteDamage(damage);
    }
    emit(chunk.end(), META, END_OF_TRACK, 0);
  }

  private void noteDamage(Damage damage) {
    String what = trackName() + " is damaged here (" + damage.getMessage() + ")";
    boolean rest = damage.offset < chunk.end();
    notes.addLoss(
        damage.offset,
        rest ? what + "; the rest of it, " + bytesLeft(damage.offset) + ", is left out" : what);
  }

  private void noteEnd(boolean ended) {
    if (!ended) {
      notes.add(at, trackName() + " has no end-of-track event; it ends with its last event");
    } else if (at < chunk.end()) {
      notes.add(at, bytesLeft(at) + " after the end of " + trackName() + "; left out");
    }
  }

  private String trackName() {
    return "track " + (chunk.number() + 1);
  }

  private String bytesLeft(int from) {
    int left = chunk.end() - from;
    return left == 1 ? "1 byte" : left + " bytes";
  }

  /** Reads one event; true if it ended the track. */
  private boolean readEvent() throws Damage {
    int start = at;
    pendingTicks += readNumber();
    int status = next("an event");
    if (status == META) {
      return readMeta(start);
    }
    if (status == 0xF0 || status == 0xF7) {
      skip(readNumber(), "a system exclusive message");
    } else if (status > 0xF0) {
      throw new Damage(
          at - 1, "0x" + Integer.toHexString(status) + " is not an event of a MIDI file");
    } else {
      readChannelEvent(start, status);
    }
    return false;
  }

  private boolean readMeta(int start) throws Damage {
    int type = next("a meta event");
    long length = readNumber();
    int dataStart = at;
    skip(length, "a meta event of " + length + " bytes");
    switch (type) {
      case END_OF_TRACK -> {
        return true;
      }
      case MetaType.TRACK_NAME,
          MetaType.INSTRUMENT_NAME,
          MetaType.MARKER,
          MetaType.CUE_POINT,
          MetaType.TEMPO,
          MetaType.TIME_SIGNATURE ->
          emitMeta(start, type, dataStart, (int) length);
      default -> {}
    }
    return false;
  }

  private void readChannelEvent(int start, int first) throws Damage {
    boolean running = first < 0x80;
    int status = running ? runningStatus : first;
    if (status == 0) {
      throw new Damage(at - 1, "data without a status byte before it");
    }
    runningStatus = status;
    int size = DATA_BYTES[(status >> 4) - 8];
    int one = running ? first : next("an event");
    int two = size == 2 ? next("an event") : 0;
    if (one > 0x7F || two > 0x7F) {
      throw new Damage(at - 1, "a status byte where data should be");
    }
    switch (status >> 4) {
      case 0x8, 0x9 -> emit(start, status, one, two);
      case 0xB -> {
        if (one == DAMPER_PEDAL) {
          emit(start, status, one, two);
        }
      }
      case 0xC -> emit(start, status, one);
      default -> {}
    }
  }

  /** A variable-length number; the standard allows four bytes, five are understood. */
  private long readNumber() throws Damage {
    int start = at;
    long value = 0;
    for (int i = 0; i < 5; i++) {
      int digit = next("a number");
      value = (value << 7) | (digit & 0x7F);
      if (digit < 0x80) {
        if (i == 4) {
          notes.add(start, "a number takes 5 bytes, the standard allows 4; it is read as " + value);
        }
        return value;
      }
    }
    throw new Damage(start, "a number of more than 5 bytes");
  }

  private int next(String what) throws Damage {
    if (at >= chunk.end()) {
      throw new Damage(chunk.end(), "it ends inside " + what);
    }
    return file.unsignedByte(at++);
  }

  private void skip(long length, String what) throws Damage {
    if (length > chunk.end() - at) {
      throw new Damage(at, what + " runs past the end of the track");
    }
    at += (int) length;
  }

  private void emitMeta(int offset, int type, int dataStart, int length) {
    startEvent(offset);
    out.write(META);
    out.write(type);
    writeNumber(length);
    out.write(file.bytes(), dataStart, length);
  }

  private void emit(int offset, int... bytes) {
    startEvent(offset);
    for (int value : bytes) {
      out.write(value);
    }
  }

  private void startEvent(int offset) {
    if (count >= eventsLeft) {
      throw file.refused(
          offset, "the file holds more than " + MOST_EVENTS + " events", "export a shorter part");
    }
    if (count == offsets.length) {
      offsets = Arrays.copyOf(offsets, count * 2);
    }
    offsets[count++] = offset;
    writeNumber(pendingTicks);
    pendingTicks = 0;
  }

  private void writeNumber(long value) {
    int shift = 0;
    while (value >>> (shift + 7) != 0) {
      shift += 7;
    }
    for (; shift > 0; shift -= 7) {
      out.write((int) (((value >>> shift) & 0x7F) | 0x80));
    }
    out.write((int) (value & 0x7F));
  }
}
