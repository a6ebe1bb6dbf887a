package org.barsheet.align.places;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A reveal that follows the notes: each note of the motif is a key position. On the first of K
 * notes a K-th of the photographs has been shown, on the second two K-ths, on the last all of them.
 *
 * @param frames film frame of each note, in order, the lead taken off
 * @param photographs the photograph that stands on each note, never fewer than the one before
 */
public record NoteKeys(List<Long> frames, List<Integer> photographs) {

  public NoteKeys {
    frames = List.copyOf(frames);
    photographs = List.copyOf(photographs);
    if (frames.isEmpty() || frames.size() != photographs.size()) {
      throw new IllegalArgumentException("each note has its photograph");
    }
  }

  /** Keys of a movement on the frames of some notes. */
  public static NoteKeys of(List<Long> noteFrames, int photographs) {
    int notes = noteFrames.size();
    List<Integer> keys =
        IntStream.rangeClosed(1, notes)
            .mapToObj(note -> PhotographRun.photograph(photographs, notes, note))
            .toList();
    return new NoteKeys(noteFrames, keys);
  }

  public long firstFrame() {
    return frames.get(0);
  }

  public long lastFrame() {
    return frames.get(frames.size() - 1);
  }
}
