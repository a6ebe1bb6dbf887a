package org.barsheet.photographs;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Writes EXIF into a JPEG by the standard's own layout (CIPA DC-008-2019, EXIF 2.32, 4.5 and 4.6):
 * a TIFF with two directories in an APP1 segment.
 */
public final class Exif {

  private static final int ASCII = 2;
  private static final int SHORT = 3;
  private static final int LONG = 4;

  private Exif() {}

  /** A JPEG with the time, the camera and an orientation in it. */
  public static byte[] into(byte[] jpeg, int orientation) {
    byte[] make = ascii("Quay Works");
    byte[] model = ascii("Box 2");
    byte[] time = ascii("2026:03:02 10:15:04");
    int second = 8 + 2 + 4 * 12 + 4;
    int texts = second + 2 + 2 * 12 + 4;
    ByteBuffer tiff = ByteBuffer.allocate(texts + make.length + model.length + time.length);
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    tiff.putShort((short) 4);
    entry(tiff, 0x010F, ASCII, make.length, texts);
    entry(tiff, 0x0110, ASCII, model.length, texts + make.length);
    entry(tiff, 0x0112, SHORT, 1, orientation << 16);
    entry(tiff, 0x8769, LONG, 1, second);
    tiff.putInt(0);
    tiff.putShort((short) 2);
    entry(tiff, 0x9003, ASCII, time.length, texts + make.length + model.length);
    entry(tiff, 0x9291, ASCII, 3, '2' << 24 | '5' << 16);
    tiff.putInt(0);
    tiff.put(make).put(model).put(time);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {jpeg[0], jpeg[1], (byte) 0xFF, (byte) 0xE1});
    int length = 2 + 6 + tiff.capacity();
    out.write(length >> 8);
    out.write(length & 0xFF);
    out.writeBytes("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    out.writeBytes(tiff.array());
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  private static byte[] ascii(String text) {
    return (text + "\0").getBytes(StandardCharsets.US_ASCII);
  }

  private static void entry(ByteBuffer tiff, int tag, int type, int count, int value) {
    tiff.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
  }
}
