package org.barsheet.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where the performers' recordings are: in a folder, under the names they were asked for, or each
 * where the plan's table says.
 *
 * @param folder resolved against the plan's folder
 * @param told a recording for each performer in the table, in the order written
 */
public record SentClips(Optional<Path> folder, List<SentClip> told) {

  /** Nothing is said of recordings, so nobody looks for them. */
  public static final SentClips NONE = new SentClips(Optional.empty(), List.of());

  public SentClips {
    told = List.copyOf(told);
  }

  /** Clips in a folder. */
  public static SentClips in(Path folder) {
    return new SentClips(Optional.of(folder), List.of());
  }

  /** Whether recordings are to be looked for at all. */
  public boolean areExpected() {
    return folder.isPresent() || !told.isEmpty();
  }

  /** What the table tells of a performer's recording. */
  public Optional<SentClip> of(String performer) {
    return told.stream().filter(recording -> recording.performer().equals(performer)).findFirst();
  }
}
