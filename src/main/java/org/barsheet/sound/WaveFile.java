package org.barsheet.sound;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.text.Ascii;
import org.barsheet.timing.SoundLayout;

/**
 * Writes 16-bit PCM as RIFF WAVE (IBM and Microsoft, "Multimedia Programming Interface and Data
 * Specifications 1.0", 1991) with a {@code bext} chunk (EBU Tech 3285), a {@code cue } chunk and
 * its names in {@code LIST adtl}.
 *
 * @param channels 1 or 2
 * @param lengthSamples samples of each channel
 * @param timeReference samples from midnight to the first one
 * @param description what it is, for the {@code bext} chunk
 * @param cues named moments, in order
 */
record WaveFile(
    int channels, long lengthSamples, long timeReference, String description, List<CuePoint> cues) {

  static final int BLOCK = 4096;
  private static final int BYTES_PER_SAMPLE = 2;
  private static final int BEXT_FIXED = 602;
  private static final long MOST_BYTES = 0xFFFF_FFFFL;

  WaveFile {
    cues = List.copyOf(cues);
  }

  /**
   * Writes the whole file.
   *
   * @throws InputException if the sound is too long for a WAVE file (4 GiB)
   */
  void write(SampleSource source, OutputStream out) throws IOException {
    long dataBytes = lengthSamples * channels * BYTES_PER_SAMPLE;
    byte[] before = chunksBeforeData();
    long riffBytes = 4 + before.length + 8 + dataBytes;
    if (riffBytes > MOST_BYTES) {
      throw new InputException(
          Problem.ofFile(
              "", "the film is too long for a sound file of 4 GiB", "split the film into reels"));
    }
    out.write(chunkHead("RIFF", riffBytes));
    out.write("WAVE".getBytes(StandardCharsets.US_ASCII));
    out.write(before);
    out.write(chunkHead("data", dataBytes));
    writeSamples(source, out);
  }

  private void writeSamples(SampleSource source, OutputStream out) throws IOException {
    float[] left = new float[BLOCK];
    float[] right = new float[BLOCK];
    byte[] block = new byte[BLOCK * channels * BYTES_PER_SAMPLE];
    ByteBuffer bytes = littleEndian(block);
    for (long from = 0; from < lengthSamples; from += BLOCK) {
      int length = (int) Math.min(BLOCK, lengthSamples - from);
      Arrays.fill(left, 0);
      Arrays.fill(right, 0);
      source.addTo(left, right, from, length);
      bytes.clear();
      for (int i = 0; i < length; i++) {
        bytes.putShort(sixteenBits(left[i]));
        if (channels == 2) {
          bytes.putShort(sixteenBits(right[i]));
        }
      }
      out.write(block, 0, bytes.position());
    }
  }

  private static short sixteenBits(float sample) {
    float scaled = Math.max(-1f, Math.min(1f, sample)) * 32767f;
    return (short) (int) (scaled + (scaled < 0 ? -0.5f : 0.5f));
  }

  private byte[] chunksBeforeData() throws IOException {
    ByteArrayOutputStream chunks = new ByteArrayOutputStream();
    chunk(chunks, "bext", bext());
    chunk(chunks, "fmt ", format());
    if (!cues.isEmpty()) {
      chunk(chunks, "cue ", cuePoints());
      chunk(chunks, "LIST", labels());
    }
    return chunks.toByteArray();
  }

  private static byte[] chunkHead(String id, long length) {
    byte[] head = new byte[8];
    littleEndian(head).put(id.getBytes(StandardCharsets.US_ASCII)).putInt((int) length);
    return head;
  }

  private static void chunk(ByteArrayOutputStream chunks, String id, byte[] body)
      throws IOException {
    chunks.write(chunkHead(id, body.length));
    chunks.write(body);
    if (body.length % 2 == 1) {
      chunks.write(0);
    }
  }

  private static ByteBuffer littleEndian(byte[] body) {
    return ByteBuffer.wrap(body).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** Description 256 characters, originator 32, dates empty, time reference at byte 338. */
  private byte[] bext() {
    byte[] history =
        ("A=PCM,F=48000,W=16,M=" + (channels == 2 ? "stereo" : "mono") + "\r\n")
            .getBytes(StandardCharsets.US_ASCII);
    byte[] body = new byte[BEXT_FIXED + history.length];
    ByteBuffer fields = littleEndian(body);
    put(fields, 0, Ascii.line(description), 256);
    put(fields, 256, "barsheet", 32);
    fields.putLong(338, timeReference);
    fields.putShort(346, (short) 1);
    fields.put(BEXT_FIXED, history);
    return body;
  }

  private static void put(ByteBuffer body, int at, String text, int room) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    body.put(at, bytes, 0, Math.min(room, bytes.length));
  }

  private byte[] format() {
    byte[] body = new byte[16];
    int frameBytes = channels * BYTES_PER_SAMPLE;
    littleEndian(body)
        .putShort((short) 1)
        .putShort((short) channels)
        .putInt(SoundLayout.SAMPLE_RATE)
        .putInt(SoundLayout.SAMPLE_RATE * frameBytes)
        .putShort((short) frameBytes)
        .putShort((short) (8 * BYTES_PER_SAMPLE));
    return body;
  }

  private byte[] cuePoints() {
    byte[] body = new byte[4 + 24 * cues.size()];
    byte[] data = "data".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer fields = littleEndian(body).putInt(cues.size());
    for (int i = 0; i < cues.size(); i++) {
      int sample = (int) cues.get(i).sample();
      fields.putInt(i + 1).putInt(sample).put(data).putInt(0).putInt(0).putInt(sample);
    }
    return body;
  }

  private byte[] labels() throws IOException {
    ByteArrayOutputStream list = new ByteArrayOutputStream();
    list.write("adtl".getBytes(StandardCharsets.US_ASCII));
    for (int i = 0; i < cues.size(); i++) {
      byte[] text = Ascii.line(cues.get(i).label()).getBytes(StandardCharsets.US_ASCII);
      byte[] body = new byte[4 + text.length + 1];
      littleEndian(body).putInt(i + 1).put(text);
      chunk(list, "labl", body);
    }
    return list.toByteArray();
  }
}
