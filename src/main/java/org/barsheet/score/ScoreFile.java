package org.barsheet.score;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * The bytes of a score file together with its name, for messages.
 *
 * @param name the file as the person named it
 * @param bytes all of it, at most {@link #MOST_BYTES}
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
record ScoreFile(String name, byte[] bytes) {

  /** Largest file that is read: 64 MiB, a thousand times the size of a long symphony. */
  static final int MOST_BYTES = 64 << 20;

  private static final String REMEDY = "name a Standard MIDI File (.mid)";

  /**
   * Reads a file whole.
   *
   * @throws InputException if it is missing, a folder, empty, unreadable or too large
   */
  static ScoreFile read(Path path) {
    String name = path.toString();
    if (Files.isDirectory(path)) {
      throw problem(name, "this is a folder, not a score", REMEDY);
    }
    if (!Files.exists(path)) {
      throw problem(name, "there is no such file", "check the name and the folder");
    }
    byte[] bytes = readBytes(path);
    if (bytes.length == 0) {
      throw problem(name, "the file is empty", "export the score again");
    }
    if (bytes.length > MOST_BYTES) {
      throw problem(name, "the file is larger than 64 MiB", REMEDY);
    }
    return new ScoreFile(name, bytes);
  }

  private static byte[] readBytes(Path path) {
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(MOST_BYTES + 1);
    } catch (IOException unreadable) {
      throw problem(path.toString(), "the file cannot be read", "check that you may read it");
    }
  }

  private static InputException problem(String name, String sentence, String remedy) {
    return new InputException(Problem.ofFile(name, sentence, remedy));
  }

  /** A file that cannot be used because of what stands at a byte. */
  InputException refused(long byteOffset, String sentence, String remedy) {
    return new InputException(Problem.at(name, "byte " + byteOffset, sentence, remedy));
  }

  int length() {
    return bytes.length;
  }

  int unsignedByte(int offset) {
    return bytes[offset] & 0xFF;
  }

  int unsignedShort(int offset) {
    return (unsignedByte(offset) << 8) | unsignedByte(offset + 1);
  }

  long unsignedInt(int offset) {
    return ((long) unsignedShort(offset) << 16) | unsignedShort(offset + 2);
  }

  /** Four bytes, least significant first, as RIFF counts. */
  long unsignedIntLittleEndian(int offset) {
    return Integer.toUnsignedLong(Integer.reverseBytes((int) unsignedInt(offset)));
  }

  /** Whether four characters stand at an offset. */
  boolean says(int offset, String fourCharacters) {
    if (offset + 4 > length()) {
      return false;
    }
    for (int i = 0; i < 4; i++) {
      if (bytes[offset + i] != (byte) fourCharacters.charAt(i)) {
        return false;
      }
    }
    return true;
  }
}
