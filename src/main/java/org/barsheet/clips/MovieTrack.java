package org.barsheet.clips;

import java.io.IOException;
import java.nio.ByteBuffer;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clips.ClipFacts.Video;
import org.barsheet.clock.Seconds;

/** One track of a file of boxes: its kind, its clock, its frames (ISO/IEC 14496-12, 8.3 to 8.6). */
final class MovieTrack {

  private static final int ROW = 8;
  private static final int ROWS_AT_ONCE = 4_096;

  /** Rows of a table of frame lengths; a phone at a wandering rate writes one a frame. */
  private static final long MOST_ROWS = 2_000_000;

  /**
   * Ticks of the shortest frame from which on one tick more is no change of rate: 29.97 on a clock
   * of 600 has 20, 59.94 has 10.
   */
  private static final long LEAST_TICKS_OF_A_FRAME = 8;

  private final ClipBytes bytes;
  private final Box track;
  private final Box media;
  private final String kind;
  private final int ticksPerSecond;
  private final FrameLengths frames;

  private MovieTrack(ClipBytes bytes, Box track) throws IOException, UnreadableClipException {
    this.bytes = bytes;
    this.track = track;
    this.media = needed(track, "mdia");
    this.kind = bytes.fourLetters(needed(media, "hdlr").body() + 8);
    Box head = needed(media, "mdhd");
    boolean wide = bytes.at(head.body(), 1).get() == 1;
    long ticks = bytes.unsigned32(head.body() + (wide ? 20 : 12));
    if (ticks == 0 || ticks > Integer.MAX_VALUE) {
      throw new UnreadableClipException("has a track without a clock");
    }
    this.ticksPerSecond = (int) ticks;
    this.frames = isVideo() || isSound() ? frameLengths() : new FrameLengths();
  }

  static MovieTrack of(ClipBytes bytes, Box track) throws IOException, UnreadableClipException {
    return new MovieTrack(bytes, track);
  }

  private Box needed(Box parent, String... path) throws IOException, UnreadableClipException {
    return parent
        .descendant(bytes, path)
        .orElseThrow(() -> new UnreadableClipException("has an index with parts missing"));
  }

  boolean isVideo() {
    return kind.equals("vide");
  }

  boolean isSound() {
    return kind.equals("soun");
  }

  boolean isTimecode() {
    return kind.equals("tmcd");
  }

  Seconds length() {
    return Seconds.of(frames.ticks, ticksPerSecond);
  }

  /** Sums over the table of frame lengths. */
  private static final class FrameLengths {
    private long count;
    private long ticks;
    private long shortest = Long.MAX_VALUE;
    private long longest;
    private long lastTicks;

    void add(long howMany, long ticksEach, boolean lastRow) {
      boolean onlyTheLast = lastRow && howMany == 1 && count > 0;
      if (!onlyTheLast) {
        shortest = Math.min(shortest, ticksEach);
        longest = Math.max(longest, ticksEach);
      }
      lastTicks = ticksEach;
      count = Math.addExact(count, howMany);
      ticks = Math.addExact(ticks, Math.multiplyExact(howMany, ticksEach));
    }

    /** A clock too coarse for its rate is a tick off now and then; a tick is little of a frame. */
    boolean isSteady() {
      return longest == shortest || (longest - shortest == 1 && shortest >= LEAST_TICKS_OF_A_FRAME);
    }

    /** What the frames would last if the last one were as long as the others are in the mean. */
    BigFraction evenTicks() {
      long others = ticks - lastTicks;
      return others == 0
          ? BigFraction.of(ticks)
          : BigFraction.of(others).divide(count - 1).multiply(count);
    }
  }

  private FrameLengths frameLengths() throws IOException, UnreadableClipException {
    Box table = needed(media, "minf", "stbl", "stts");
    long rows = bytes.unsigned32(table.body() + 4);
    if (rows > MOST_ROWS || rows * ROW > table.end() - table.body() - ROW) {
      throw new UnreadableClipException("has an index that is damaged");
    }
    FrameLengths lengths = new FrameLengths();
    for (long row = 0; row < rows; row += ROWS_AT_ONCE) {
      int some = (int) Math.min(ROWS_AT_ONCE, rows - row);
      ByteBuffer piece = bytes.at(table.body() + ROW + row * ROW, some * ROW);
      for (int i = 0; i < some; i++) {
        long howMany = Integer.toUnsignedLong(piece.getInt());
        lengths.add(howMany, Integer.toUnsignedLong(piece.getInt()), row + i == rows - 1);
      }
    }
    if (lengths.count == 0 || lengths.ticks == 0) {
      throw new UnreadableClipException("is written in fragments: copy it into a plain file first");
    }
    return lengths;
  }

  Video video() throws IOException, UnreadableClipException {
    Box description = needed(media, "minf", "stbl", "stsd");
    long entry = description.body() + 8;
    // A visual entry: its head, six reserved bytes, an index, sixteen bytes, then the size.
    int width = bytes.unsigned16(entry + 32);
    int height = bytes.unsigned16(entry + 34);
    boolean turned = isTurned();
    return new Video(
        frames.count,
        new Seconds(frames.evenTicks().divide(ticksPerSecond)),
        frames.isSteady(),
        turned ? height : width,
        turned ? width : height);
  }

  /** Whether the track's matrix turns the video a quarter: its first and fifth numbers are 0. */
  private boolean isTurned() throws IOException, UnreadableClipException {
    Box head = needed(track, "tkhd");
    boolean wide = bytes.at(head.body(), 1).get() == 1;
    long matrix = head.body() + (wide ? 52 : 40);
    return bytes.unsigned32(matrix) == 0 && bytes.unsigned32(matrix + 16) == 0;
  }
}
