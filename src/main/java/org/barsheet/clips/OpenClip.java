package org.barsheet.clips;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/** A recording that is open, long enough to have a kind. */
final class OpenClip {

  private static final int SHORTEST = 12;

  private final SeekableByteChannel channel;

  /** What is wanted of an open recording. */
  interface Reader<T> {
    T read(OpenClip clip) throws IOException, UnreadableClipException;
  }

  private OpenClip(SeekableByteChannel channel) {
    this.channel = channel;
  }

  /**
   * Opens a recording, reads it and closes it.
   *
   * @throws UnreadableClipException if it is too short, or damaged
   * @throws IOException if the disk does not give it
   */
  static <T> T read(Path file, Reader<T> reader) throws IOException, UnreadableClipException {
    if (!Files.isRegularFile(file)) {
      throw new UnreadableClipException("is a folder, a pipe or a device, not a recording");
    }
    try (SeekableByteChannel channel = Files.newByteChannel(file)) {
      if (channel.size() < SHORTEST) {
        throw new UnreadableClipException("is empty or cut short");
      }
      return reader.read(new OpenClip(channel));
    } catch (ArithmeticException tooLarge) {
      throw new UnreadableClipException("has impossible lengths in it");
    }
  }

  /** Its bytes, numbers with their high end first. */
  ClipBytes bytes() {
    return new ClipBytes(channel, ByteOrder.BIG_ENDIAN);
  }

  /** Whether it is a WAVE file by its first letters. */
  boolean isWave() throws IOException, UnreadableClipException {
    String first = bytes().fourLetters(0);
    return first.equals("RIFF") || first.equals("RF64");
  }

  /** What a WAVE file says of itself. */
  ClipFacts wave() throws IOException, UnreadableClipException {
    return WaveHead.read(new ClipBytes(channel, ByteOrder.LITTLE_ENDIAN));
  }
}
