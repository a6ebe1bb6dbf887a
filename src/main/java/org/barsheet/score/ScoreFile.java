package org.barsheet.score;

import java.nio.file.Path;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;

/**
 * The bytes of a score file together with its name, for messages.
 *
 * @param name the file as the person named it
 * @param bytes all of it, at most what {@link Limit#SCORE} says
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never handed out
record ScoreFile(String name, byte[] bytes) {

  /**
   * Reads a file whole.
   *
   * @throws InputException if it is missing, no regular file, empty, unreadable or too large
   */
  static ScoreFile read(Path path) {
    byte[] bytes = GivenFile.bytes(path, Limit.SCORE);
    String name = path.toString();
    if (bytes.length == 0) {
      throw new InputException(Problem.ofFile(name, "the file is empty", "export the score again"));
    }
    return new ScoreFile(name, bytes);
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
