package org.barsheet.sound;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;

/**
 * A sound bank made from the published structure alone (SoundFont Technical Specification 2.04,
 * Creative Technology 2006, chapters 4 to 7): one looped cosine of 480 Hz at key 69 that every
 * preset plays. A cosine is strongest at once, so that its onset is one sample.
 */
public final class SoundFontBytes {

  /** A preset's bank for drums (7.2). */
  public static final int DRUMS = 128;

  /** One period of 480 Hz at 48 kHz; the sample has a few, the last of them looped. */
  private static final int PERIOD = 100;

  private static final int SAMPLES = 40 * PERIOD;

  /** Zeros that follow every sample (6.1). */
  private static final int ZEROS = 46;

  /** Generators by number (8.1.2). */
  private static final int INSTRUMENT = 41;

  private static final int SAMPLE_ID = 53;
  private static final int SAMPLE_MODES = 54;
  private static final int LOOPS = 1;

  private SoundFontBytes() {}

  /** A preset's program and bank. */
  public record Preset(int program, int bank, String name) {}

  public static byte[] of(List<Preset> presets) {
    byte[] body =
        joined(
            "sfbk".getBytes(StandardCharsets.US_ASCII),
            list("INFO", chunk("ifil", shorts(2, 4)), chunk("INAM", text("A test tone", 12))),
            list("sdta", chunk("smpl", samples())),
            list(
                "pdta",
                chunk("phdr", presetHeads(presets)),
                chunk("pbag", bags(presets.size())),
                chunk("pmod", new byte[10]),
                chunk("pgen", presetGenerators(presets.size())),
                chunk("inst", joined(text("Tone", 20), shorts(0), text("EOI", 20), shorts(1))),
                chunk("ibag", shorts(0, 0, 2, 0)),
                chunk("imod", new byte[10]),
                chunk("igen", shorts(SAMPLE_MODES, LOOPS, SAMPLE_ID, 0, 0, 0)),
                chunk("shdr", sampleHeads())));
    return chunk("RIFF", body);
  }

  private static byte[] samples() {
    return bytes(
        2 * (SAMPLES + ZEROS),
        wave -> {
          for (int i = 0; i < SAMPLES; i++) {
            wave.putShort((short) Math.round(20_000 * Math.cos(2 * Math.PI * i / PERIOD)));
          }
        });
  }

  /** Name, program, bank, first bag, and twelve bytes kept for later (7.2). */
  private static byte[] presetHeads(List<Preset> presets) {
    ByteArrayOutputStream heads = new ByteArrayOutputStream();
    for (int i = 0; i < presets.size(); i++) {
      Preset preset = presets.get(i);
      heads.writeBytes(text(preset.name(), 20));
      heads.writeBytes(shorts(preset.program(), preset.bank(), i));
      heads.writeBytes(new byte[12]);
    }
    heads.writeBytes(joined(text("EOP", 20), shorts(0, 0, presets.size()), new byte[12]));
    return heads.toByteArray();
  }

  /** A bag a preset, of one generator and no modulator (7.3). */
  private static byte[] bags(int presets) {
    ByteArrayOutputStream bags = new ByteArrayOutputStream();
    for (int i = 0; i <= presets; i++) {
      bags.writeBytes(shorts(i, 0));
    }
    return bags.toByteArray();
  }

  private static byte[] presetGenerators(int presets) {
    ByteArrayOutputStream generators = new ByteArrayOutputStream();
    for (int i = 0; i < presets; i++) {
      generators.writeBytes(shorts(INSTRUMENT, 0));
    }
    generators.writeBytes(shorts(0, 0));
    return generators.toByteArray();
  }

  /** Name, start, end, loop, rate, key, correction, link, kind (7.10). */
  private static byte[] sampleHeads() {
    return bytes(
        2 * 46,
        heads -> {
          heads.put(text("cosine", 20)).putInt(0).putInt(SAMPLES).putInt(SAMPLES - 20 * PERIOD);
          heads.putInt(SAMPLES - PERIOD).putInt(48_000).put((byte) 69).put((byte) 0);
          heads.putShort((short) 0).putShort((short) 1).put(text("EOS", 20));
        });
  }

  /** So many little-endian bytes. */
  private static byte[] bytes(int length, Consumer<ByteBuffer> writing) {
    byte[] bytes = new byte[length];
    writing.accept(ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN));
    return bytes;
  }

  private static byte[] shorts(int... values) {
    return bytes(
        2 * values.length,
        bytes -> {
          for (int value : values) {
            bytes.putShort((short) value);
          }
        });
  }

  private static byte[] text(String text, int room) {
    return bytes(room, bytes -> bytes.put(text.getBytes(StandardCharsets.US_ASCII)));
  }

  private static byte[] list(String kind, byte[]... chunks) {
    return chunk("LIST", joined(kind.getBytes(StandardCharsets.US_ASCII), joined(chunks)));
  }

  private static byte[] chunk(String name, byte[] body) {
    byte[] head =
        bytes(8, bytes -> bytes.put(name.getBytes(StandardCharsets.US_ASCII)).putInt(body.length));
    return joined(head, body);
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }
}
