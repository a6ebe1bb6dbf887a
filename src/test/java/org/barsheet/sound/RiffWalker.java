package org.barsheet.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * Walks the chunks of a WAVE file by the rules of the RIFF text (IBM and Microsoft, 1991): four
 * characters, a length, the body padded to an even length.
 */
public final class RiffWalker {

  private final Map<String, byte[]> chunks = new LinkedHashMap<>();

  public RiffWalker(byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    require(fourCharacters(bytes).equals("RIFF"), "RIFF");
    require(bytes.getInt() == file.length - 8, "the length of the whole");
    require(fourCharacters(bytes).equals("WAVE"), "WAVE");
    while (bytes.hasRemaining()) {
      String id = fourCharacters(bytes);
      byte[] body = new byte[bytes.getInt()];
      bytes.get(body);
      if (body.length % 2 == 1) {
        require(bytes.get() == 0, "padding after " + id);
      }
      require(chunks.put(id, body) == null, "one chunk " + id);
    }
  }

  private static String fourCharacters(ByteBuffer bytes) {
    byte[] id = new byte[4];
    bytes.get(id);
    return new String(id, StandardCharsets.US_ASCII);
  }

  public ByteBuffer chunk(String id) {
    byte[] body = chunks.get(id);
    require(body != null, "chunk " + id);
    return ByteBuffer.wrap(body == null ? new byte[0] : body).order(ByteOrder.LITTLE_ENDIAN);
  }

  /** Samples of the first channel. */
  public short[] samples(int channels) {
    ByteBuffer data = chunk("data");
    short[] samples = new short[data.remaining() / (2 * channels)];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = data.getShort(2 * channels * i);
    }
    return samples;
  }

  /** Labels by the sample they stand at, those of one sample joined by " + ". */
  public Map<Long, String> cues() {
    Map<Integer, Long> sampleOf = new TreeMap<>();
    ByteBuffer points = chunk("cue ");
    int count = points.getInt();
    require(points.remaining() == 24 * count, "24 bytes a cue point");
    for (int i = 0; i < count; i++) {
      int id = points.getInt();
      long position = Integer.toUnsignedLong(points.getInt());
      require(fourCharacters(points).equals("data"), "points into the data");
      require(points.getLong() == 0, "chunk start and block start are 0 for one data chunk");
      require(Integer.toUnsignedLong(points.getInt()) == position, "position and offset agree");
      require(sampleOf.put(id, position) == null, "cue ids differ");
    }
    return labels(sampleOf);
  }

  private Map<Long, String> labels(Map<Integer, Long> sampleOf) {
    Map<Long, String> labels = new TreeMap<>();
    ByteBuffer list = chunk("LIST");
    require(fourCharacters(list).equals("adtl"), "adtl");
    while (list.hasRemaining()) {
      require(fourCharacters(list).equals("labl"), "labl");
      byte[] body = new byte[list.getInt()];
      list.get(body);
      if (body.length % 2 == 1) {
        list.get();
      }
      Long sample = sampleOf.get(ByteBuffer.wrap(body).order(ByteOrder.LITTLE_ENDIAN).getInt());
      require(body[body.length - 1] == 0, "a label ends with a zero");
      require(sample != null, "a label belongs to a cue");
      String text = new String(body, 4, body.length - 5, StandardCharsets.US_ASCII);
      labels.merge(sample == null ? -1 : sample, text, (one, other) -> one + " + " + other);
    }
    return labels;
  }

  private static void require(boolean rule, String broken) {
    if (!rule) {
      throw new AssertionError("not RIFF WAVE: " + broken);
    }
  }
}
