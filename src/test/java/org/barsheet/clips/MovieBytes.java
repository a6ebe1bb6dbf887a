package org.barsheet.clips;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A small file of boxes written by hand from ISO/IEC 14496-12: no video, only its index. */
public final class MovieBytes {

  private static final int WIDTH = 1920;
  private static final int HEIGHT = 1080;

  private boolean turned;
  private int ticksPerSecond = 30_000;
  private boolean indexFirst;
  private final List<int[]> frames = new ArrayList<>();

  /** So many frames, each so many ticks long. */
  public MovieBytes frames(int count, int ticks) {
    frames.add(new int[] {count, ticks});
    return this;
  }

  public MovieBytes clock(int ticks) {
    ticksPerSecond = ticks;
    return this;
  }

  /** Held upright: the matrix turns it a quarter. */
  public MovieBytes turned() {
    turned = true;
    return this;
  }

  /** The video begins so many thousandths of a second after the file. */
  public MovieBytes indexFirst() {
    indexFirst = true;
    return this;
  }

  private interface Content {
    void into(DataOutputStream out) throws IOException;
  }

  private static byte[] box(String name, Content content) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    try (DataOutputStream in = new DataOutputStream(body);
        DataOutputStream out = new DataOutputStream(whole)) {
      content.into(in);
      out.writeInt(body.size() + 8);
      out.write(name.getBytes(StandardCharsets.ISO_8859_1));
      out.write(body.toByteArray());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return whole.toByteArray();
  }

  private static void ints(DataOutputStream out, int... values) throws IOException {
    for (int value : values) {
      out.writeInt(value);
    }
  }

  public byte[] bytes() {
    byte[] type = box("ftyp", out -> out.writeBytes("isom\0\0\0\0isom"));
    byte[] media = box("mdat", out -> out.write(new byte[1000]));
    byte[] movie =
        box(
            "moov",
            out -> {
              out.write(box("mvhd", head -> ints(head, 0, 0, 0, 1000, 0)));
              out.write(track());
            });
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(type);
    file.writeBytes(indexFirst ? movie : media);
    file.writeBytes(indexFirst ? media : movie);
    return file.toByteArray();
  }

  private byte[] track() {
    int one = 0x10000;
    return box(
        "trak",
        out -> {
          out.write(
              box(
                  "tkhd",
                  head -> {
                    ints(head, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0);
                    ints(head, turned ? 0 : one, turned ? one : 0, 0);
                    ints(head, turned ? -one : 0, turned ? 0 : one, 0);
                    ints(head, 0, 0, 0x40000000, WIDTH << 16, HEIGHT << 16);
                  }));
          out.write(box("mdia", this::media));
        });
  }

  private void media(DataOutputStream out) throws IOException {
    int ticks = frames.stream().mapToInt(f -> f[0] * f[1]).sum();
    out.write(box("mdhd", head -> ints(head, 0, 0, 0, ticksPerSecond, ticks, 0)));
    out.write(
        box(
            "hdlr",
            handler -> {
              ints(handler, 0, 0);
              handler.writeBytes("vide");
              ints(handler, 0, 0, 0);
            }));
    out.write(box("minf", info -> info.write(box("stbl", this::tables))));
  }

  private void tables(DataOutputStream out) throws IOException {
    out.write(
        box(
            "stsd",
            descriptions -> {
              ints(descriptions, 0, 1, 86);
              descriptions.writeBytes("avc1");
              descriptions.write(new byte[8 + 16]);
              descriptions.writeShort(WIDTH);
              descriptions.writeShort(HEIGHT);
              descriptions.write(new byte[50]);
            }));
    out.write(
        box(
            "stts",
            lengths -> {
              ints(lengths, 0, frames.size());
              for (int[] row : frames) {
                ints(lengths, row);
              }
            }));
  }
}
