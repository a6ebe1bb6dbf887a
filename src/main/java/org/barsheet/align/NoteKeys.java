package org.barsheet.align;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A reveal that follows the notes: each note of the motif is a key position. On the first of K
 * notes a K-th of the pictures has been shown, on the second two K-ths, on the last all of them.
 *
 * @param frames film frame of each note, in order, the picture lead taken off
 * @param pictures the picture that stands on each note, never fewer than the one before
 */
public record NoteKeys(List<Long> frames, List<Integer> pictures) {

  public NoteKeys {
    frames = List.copyOf(frames);
    pictures = List.copyOf(pictures);
    if (frames.isEmpty() || frames.size() != pictures.size()) {
      throw new IllegalArgumentException("each note has its picture");
    }
  }

  /** Keys of a movement on the frames of some notes. */
  public static NoteKeys of(List<Long> noteFrames, int pictures) {
    int notes = noteFrames.size();
    List<Integer> keys =
        IntStream.rangeClosed(1, notes)
            .mapToObj(note -> PictureRun.picture(pictures, notes, note))
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
