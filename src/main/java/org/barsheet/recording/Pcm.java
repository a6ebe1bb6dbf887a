package org.barsheet.recording;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioFormat.Encoding;

/** Uncompressed samples of one moment, as they stand in a file, mixed to one channel. */
final class Pcm {

  private final AudioFormat format;
  private final int channels;
  private final int sampleBytes;
  private final boolean floating;
  private final boolean unsigned;

  Pcm(AudioFormat format) {
    this.format = format;
    this.channels = format.getChannels();
    this.sampleBytes = format.getSampleSizeInBits() / 8;
    this.floating = format.getEncoding().equals(Encoding.PCM_FLOAT);
    this.unsigned = format.getEncoding().equals(Encoding.PCM_UNSIGNED);
  }

  /** Whole numbers of 8 to 32 bits, floating ones of 32 or 64. */
  static boolean reads(AudioFormat format) {
    int bits = format.getSampleSizeInBits();
    boolean whole =
        format.getEncoding().equals(Encoding.PCM_SIGNED)
            || format.getEncoding().equals(Encoding.PCM_UNSIGNED);
    boolean floats = format.getEncoding().equals(Encoding.PCM_FLOAT);
    return (whole && bits % 8 == 0 && bits >= 8 && bits <= 32)
        || (floats && (bits == 32 || bits == 64));
  }

  int frameBytes() {
    return channels * sampleBytes;
  }

  /** The mean of all channels, −1 to 1. */
  float mono(byte[] frame) {
    double sum = 0;
    for (int channel = 0; channel < channels; channel++) {
      sum += floating ? floating(frame, channel) : whole(frame, channel * sampleBytes);
    }
    return (float) (sum / channels);
  }

  private double floating(byte[] frame, int channel) {
    ByteBuffer bytes =
        ByteBuffer.wrap(frame)
            .order(format.isBigEndian() ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
    double value =
        sampleBytes == Float.BYTES
            ? bytes.getFloat(channel * sampleBytes)
            : bytes.getDouble(channel * sampleBytes);
    return Double.isFinite(value) ? value : 0;
  }

  private double whole(byte[] frame, int from) {
    long value = 0;
    for (int i = 0; i < sampleBytes; i++) {
      int place = format.isBigEndian() ? from + i : from + sampleBytes - 1 - i;
      value = (value << 8) | (frame[place] & 0xFF);
    }
    long half = 1L << (8 * sampleBytes - 1);
    long signed = unsigned || value < half ? value : value - 2 * half;
    return (double) (unsigned ? signed - half : signed) / half;
  }
}
