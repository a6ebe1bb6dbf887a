package org.barsheet.clips;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads the headers of a recording: a WAVE file (IBM and Microsoft, Multimedia Programming
 * Interface and Data Specifications 1.0, 1991; RF64 of EBU Tech 3306) or a file of boxes (ISO/IEC
 * 14496-12, MP4, and QuickTime, MOV, which it grew from). A few kilobytes are read, whatever the
 * size of the file.
 */
public final class ClipReader {

  private ClipReader() {}

  /**
   * What a recording says of itself.
   *
   * @throws UnreadableClipException if it is of another kind, or damaged
   * @throws IOException if the disk does not give it
   */
  public static ClipFacts read(Path file) throws IOException, UnreadableClipException {
    return OpenClip.read(file, clip -> facts(file, clip));
  }

  private static ClipFacts facts(Path file, OpenClip clip)
      throws IOException, UnreadableClipException {
    Optional<OtherFormat> other = OtherFormat.of(clip.bytes());
    if (other.isPresent()) {
      throw other.get().of(file);
    }
    return clip.isWave() ? clip.wave() : MovieHead.read(clip.bytes());
  }
}
