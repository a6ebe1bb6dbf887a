package org.barsheet.production;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.barsheet.text.Sha256;

/**
 * Tells large files apart without reading them whole: by their length and by pieces from all over
 * them. Two recordings that differ differ in every piece with sound in it.
 */
final class Samples {

  private static final int PIECES = 32;
  private static final int PIECE_BYTES = 1 << 15;

  /** Digits of the digest that are kept. */
  private static final int DIGITS = 24;

  private Samples() {}

  /** A digest of a file; of nothing where it can't be read. */
  static String of(Path file) {
    MessageDigest digest = Sha256.digest();
    try (SeekableByteChannel channel = Files.newByteChannel(file)) {
      long size = channel.size();
      digest.update(Long.toString(size).getBytes(StandardCharsets.US_ASCII));
      ByteBuffer piece = ByteBuffer.allocate(PIECE_BYTES);
      for (int i = 0; i < PIECES; i++) {
        channel.position(Math.max(0, (size - PIECE_BYTES) / (PIECES - 1) * i));
        piece.clear();
        while (piece.hasRemaining() && channel.read(piece) >= 0) {
          // until it is full or the file ends
        }
        digest.update(piece.flip());
      }
    } catch (IOException unreadable) {
      return "unreadable";
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
  }

  /** A digest of a text. */
  static String of(String text) {
    return Sha256.hex(text).substring(0, DIGITS);
  }
}
