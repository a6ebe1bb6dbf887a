package org.barsheet.browser;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** A RIFF WAVE file (IBM and Microsoft, 1991): mono, 8 bits, 8,000 samples a second, silent. */
final class WaveBytes {

  private static final int RATE = 8_000;
  private static final byte SILENT = (byte) 128;

  private WaveBytes() {}

  static byte[] silence(int seconds) {
    int samples = seconds * RATE;
    ByteBuffer file = ByteBuffer.allocate(44 + samples).order(ByteOrder.LITTLE_ENDIAN);
    file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + samples);
    file.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16).putShort((short) 1);
    file.putShort((short) 1).putInt(RATE).putInt(RATE).putShort((short) 1).putShort((short) 8);
    file.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(samples);
    while (file.hasRemaining()) {
      file.put(SILENT);
    }
    return file.array();
  }
}
