package org.barsheet.movie;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.ShortBuffer;
import java.nio.charset.StandardCharsets;

/** The samples of a WAVE file of 16 bits. */
final class WaveSamples {

  private WaveSamples() {}

  static short[] of(byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    int at = 12;
    while (!new String(file, at, 4, StandardCharsets.US_ASCII).equals("data")) {
      int length = bytes.getInt(at + 4);
      at += 8 + length + length % 2;
    }
    bytes.position(at + 8).limit(at + 8 + bytes.getInt(at + 4));
    ShortBuffer samples = bytes.slice().order(ByteOrder.LITTLE_ENDIAN).asShortBuffer();
    short[] all = new short[samples.remaining()];
    samples.get(all);
    return all;
  }
}
