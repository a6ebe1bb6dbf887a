package org.barsheet.clips;

import java.io.IOException;
import java.util.Optional;
import org.barsheet.clock.Seconds;

/**
 * The timecode a camera wrote beside its video: frames since midnight of its first frame (Apple,
 * QuickTime File Format Specification, "Timecode Media").
 */
final class TimecodeSample {

  /** Places in the sample's description, from its length on. */
  private static final int FLAGS = 20;

  private static final int TICKS_PER_SECOND = 24;
  private static final int TICKS_PER_FRAME = 28;

  /** The number counts something else, not a time of day. */
  private static final long COUNTER = 8;

  private TimecodeSample() {}

  /** The time since midnight that a timecode track begins with, where it can be understood. */
  static Optional<Seconds> sinceMidnight(ClipBytes bytes, Box track)
      throws IOException, UnreadableClipException {
    Optional<Box> table = track.descendant(bytes, "mdia", "minf", "stbl");
    Optional<Box> description = child(bytes, table, "stsd");
    Optional<Long> place = place(bytes, table);
    if (description.isEmpty() || place.isEmpty()) {
      return Optional.empty();
    }
    long entry = description.get().body() + 8;
    long scale = bytes.unsigned32(entry + TICKS_PER_SECOND);
    long ticks = bytes.unsigned32(entry + TICKS_PER_FRAME);
    if (scale == 0 || ticks == 0 || (bytes.unsigned32(entry + FLAGS) & COUNTER) != 0) {
      return Optional.empty();
    }
    long frame = bytes.unsigned32(place.get());
    return Optional.of(Seconds.of(Math.multiplyExact(frame, ticks), scale));
  }

  private static Optional<Box> child(ClipBytes bytes, Optional<Box> table, String name)
      throws IOException, UnreadableClipException {
    return table.isPresent() ? table.get().child(bytes, name) : Optional.empty();
  }

  /** Where the track's first chunk lies in the file. */
  private static Optional<Long> place(ClipBytes bytes, Optional<Box> table)
      throws IOException, UnreadableClipException {
    Optional<Box> near = child(bytes, table, "stco");
    if (near.isPresent()) {
      return Optional.of(bytes.unsigned32(near.get().body() + 8));
    }
    Optional<Box> far = child(bytes, table, "co64");
    return far.isPresent() ? Optional.of(bytes.positive64(far.get().body() + 8)) : Optional.empty();
  }
}
