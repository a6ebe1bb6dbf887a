package org.barsheet.clips;

import java.io.IOException;
import java.util.Map;

/**
 * How a WAVE file keeps its sound (the {@code fmt} chunk; tags of RFC 2361, "WAVE and AVI Codec
 * Registries", 1998, and Microsoft's WAVEFORMATEXTENSIBLE).
 *
 * @param samplesPerSecond of each channel
 * @param bytesASample of all channels together
 */
record WaveFormat(int samplesPerSecond, int bytesASample) {

  private static final int PCM = 1;
  private static final int FLOATING = 3;

  /** The tag stands further down, as the first two bytes of a name of sixteen. */
  private static final int EXTENSIBLE = 0xFFFE;

  private static final Map<Integer, String> PACKED =
      Map.of(
          0x02, "ADPCM",
          0x06, "A-law",
          0x07, "\u00B5-law",
          0x11, "IMA ADPCM",
          0x31, "GSM 6.10",
          0x50, "MPEG",
          0x55, "MPEG layer 3");

  /** Places in the chunk. */
  private static final int RATE = 4;

  private static final int BYTES_A_SAMPLE = 12;
  private static final int FURTHER_TAG = 24;

  /**
   * Reads the chunk.
   *
   * @throws UnreadableClipException if the sound is packed: its length does not follow from its
   *     bytes
   */
  static WaveFormat read(ClipBytes bytes, long body, long length)
      throws IOException, UnreadableClipException {
    int tag = bytes.unsigned16(body);
    if (tag == EXTENSIBLE && length >= FURTHER_TAG + 2) {
      tag = bytes.unsigned16(body + FURTHER_TAG);
    }
    if (tag != PCM && tag != FLOATING) {
      throw new UnreadableClipException(
          "holds compressed sound ("
              + PACKED.getOrDefault(tag, "format " + tag)
              + "): its length can't be read",
          "ask for it as a plain WAV: 48000 samples a second, 16 or 24 bits");
    }
    long rate = bytes.unsigned32(body + RATE);
    int bytesASample = bytes.unsigned16(body + BYTES_A_SAMPLE);
    if (rate == 0 || rate > Integer.MAX_VALUE || bytesASample == 0) {
      throw new UnreadableClipException("has no sound in it");
    }
    return new WaveFormat((int) rate, bytesASample);
  }
}
