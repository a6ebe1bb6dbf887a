package org.barsheet.clips;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Reads the headers of a recording: a WAVE file (IBM and Microsoft, Multimedia Programming
 * Interface and Data Specifications 1.0, 1991; RF64 of EBU Tech 3306) or a file of boxes (ISO/IEC
 * 14496-12, MP4, and QuickTime, MOV, which it grew from). A few kilobytes are read, whatever the
 * size of the file.
 */
public final class ClipReader {

  private static final int SHORTEST = 12;

  private ClipReader() {}

  /**
   * What a recording says of itself.
   *
   * @throws UnreadableClipException if it is of another kind, or damaged
   * @throws IOException if the disk does not give it
   */
  public static ClipFacts read(Path file) throws IOException, UnreadableClipException {
    try (SeekableByteChannel channel = Files.newByteChannel(file)) {
      if (channel.size() < SHORTEST) {
        throw new UnreadableClipException("is empty or cut short");
      }
      ClipBytes bytes = new ClipBytes(channel, ByteOrder.BIG_ENDIAN);
      String first = bytes.fourLetters(0);
      if (first.equals("RIFF") || first.equals("RF64")) {
        return WaveHead.read(new ClipBytes(channel, ByteOrder.LITTLE_ENDIAN));
      }
      return MovieHead.read(bytes);
    } catch (ArithmeticException tooLarge) {
      throw new UnreadableClipException("says lengths that cannot be");
    }
  }
}
