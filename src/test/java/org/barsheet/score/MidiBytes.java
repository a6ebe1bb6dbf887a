package org.barsheet.score;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes Standard MIDI Files byte by byte, sound ones and broken ones. */
public final class MidiBytes {

  private int format = 1;
  private int division = 480;
  private int announcedTracks = -1;
  private final List<byte[]> chunks = new ArrayList<>();
  private int trackCount;

  /** A file of format 1 with 480 ticks to the quarter note. */
  public static MidiBytes file() {
    return new MidiBytes();
  }

  public MidiBytes format(int newFormat) {
    format = newFormat;
    return this;
  }

  /** The division as the header spells it. */
  public MidiBytes division(int raw) {
    division = raw;
    return this;
  }

  /** A track count other than the true one. */
  public MidiBytes announcing(int tracks) {
    announcedTracks = tracks;
    return this;
  }

  public MidiBytes track(Track track) {
    return rawTrack(track.endOfTrack().bytes());
  }

  /** A track of these bytes, whatever they are. */
  public MidiBytes rawTrack(byte[] events) {
    trackCount++;
    return chunk("MTrk", events.length, events);
  }

  /** A chunk whose announced length may lie. */
  public MidiBytes chunk(String name, long announcedLength, byte[] content) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(name.getBytes(StandardCharsets.ISO_8859_1));
    writeInt(out, announcedLength);
    out.writeBytes(content);
    return raw(out.toByteArray());
  }

  /** Bytes that belong to no chunk. */
  public MidiBytes raw(byte[] bytes) {
    chunks.add(bytes);
    return this;
  }

  public byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes("MThd".getBytes(StandardCharsets.US_ASCII));
    writeInt(out, 6);
    writeShort(out, format);
    writeShort(out, announcedTracks < 0 ? trackCount : announcedTracks);
    writeShort(out, division);
    chunks.forEach(out::writeBytes);
    return out.toByteArray();
  }

  /** Writes the file into a folder. */
  public Path into(Path folder) {
    return write(folder, bytes());
  }

  /** Writes any bytes as a file. */
  public static Path write(Path folder, byte[] bytes) {
    try {
      return Files.write(folder.resolve("case.mid"), bytes);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static void writeShort(ByteArrayOutputStream out, int value) {
    out.write(value >> 8);
    out.write(value);
  }

  private static void writeInt(ByteArrayOutputStream out, long value) {
    writeShort(out, (int) (value >> 16));
    writeShort(out, (int) value);
  }

  /** Events of a track; times are absolute ticks that never go back. */
  public static final class Track {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private long now;

    /** Eight notes C4 to C5, a quarter apart and an eighth long, from tick 0. */
    public static Track scale(int ticksPerQuarter) {
      Track track = new Track();
      int[] pitches = {60, 62, 64, 65, 67, 69, 71, 72};
      for (int i = 0; i < pitches.length; i++) {
        long start = (long) i * ticksPerQuarter;
        track.note(start, start + Math.max(1, ticksPerQuarter / 2), 0, pitches[i]);
      }
      return track;
    }

    public Track note(long on, long off, int channel, int pitch) {
      return event(on, 0x90 | channel, pitch, 80).event(off, 0x80 | channel, pitch, 0);
    }

    public Track tempo(long tick, int microseconds) {
      return meta(
          tick, 0x51, (byte) (microseconds >> 16), (byte) (microseconds >> 8), (byte) microseconds);
    }

    public Track meter(long tick, int numerator, int power) {
      return meta(tick, 0x58, (byte) numerator, (byte) power, (byte) 24, (byte) 8);
    }

    public Track text(long tick, int type, String text) {
      return meta(tick, type, text.getBytes(StandardCharsets.UTF_8));
    }

    public Track meta(long tick, int type, byte... data) {
      event(tick, 0xFF, type);
      writeNumber(data.length);
      out.writeBytes(data);
      return this;
    }

    public Track event(long tick, int... bytes) {
      writeNumber(tick - now);
      now = tick;
      return raw(bytes);
    }

    public Track raw(int... bytes) {
      for (int value : bytes) {
        out.write(value);
      }
      return this;
    }

    public Track endOfTrack() {
      return meta(now, 0x2F);
    }

    public byte[] bytes() {
      return out.toByteArray();
    }

    private void writeNumber(long value) {
      for (int shift = 28; shift > 0; shift -= 7) {
        if (value >>> shift != 0) {
          out.write((int) ((value >>> shift) & 0x7F) | 0x80);
        }
      }
      out.write((int) (value & 0x7F));
    }
  }
}
