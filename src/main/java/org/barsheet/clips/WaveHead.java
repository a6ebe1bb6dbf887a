package org.barsheet.clips;

import java.io.IOException;
import java.util.Optional;
import org.barsheet.clips.ClipFacts.Sound;
import org.barsheet.clock.Seconds;

/** The chunks of a WAVE file before and after its sound. */
final class WaveHead {

  private static final int FIRST_CHUNK = 12;
  private static final int CHUNK_HEAD = 8;
  private static final int MOST_CHUNKS = 1_000;

  /** A length of 32 bits that stands for the one in the ds64 chunk (EBU Tech 3306). */
  private static final long SEE_DS64 = 0xFFFF_FFFFL;

  /** Places in the chunks, after their heads. */
  private static final int DS64_DATA = 8;

  /** Behind description, originator, reference, date and time (EBU Tech 3285). */
  private static final int BEXT_TIME_REFERENCE = 256 + 32 + 32 + 10 + 8;

  private final ClipBytes bytes;
  private Optional<WaveFormat> format = Optional.empty();
  private long dataBytes = -1;
  private long longDataBytes = -1;

  /** Programs that know nothing of timecode leave it 0. */
  private long startSample;

  private WaveHead(ClipBytes bytes) {
    this.bytes = bytes;
  }

  static ClipFacts read(ClipBytes bytes) throws IOException, UnreadableClipException {
    if (!bytes.fourLetters(8).equals("WAVE")) {
      throw new UnreadableClipException("isn't a WAV, MP4 or MOV file");
    }
    WaveHead head = new WaveHead(bytes);
    head.walk();
    return head.facts();
  }

  private void walk() throws IOException, UnreadableClipException {
    long place = FIRST_CHUNK;
    for (int i = 0; i < MOST_CHUNKS && place + CHUNK_HEAD <= bytes.length(); i++) {
      String name = bytes.fourLetters(place);
      long length = bytes.unsigned32(place + 4);
      long body = place + CHUNK_HEAD;
      chunk(name, body, length);
      if (name.equals("data") && length == SEE_DS64) {
        length = Math.max(0, longDataBytes);
      }
      place = Math.addExact(body, length + (length & 1));
    }
  }

  private void chunk(String name, long body, long length)
      throws IOException, UnreadableClipException {
    switch (name) {
      case "fmt " -> format = Optional.of(WaveFormat.read(bytes, body, length));
      case "ds64" -> longDataBytes = bytes.positive64(body + DS64_DATA);
      case "data" -> dataBytes = present(body, length == SEE_DS64 ? longDataBytes : length);
      case "bext" -> startSample = bytes.positive64(body + BEXT_TIME_REFERENCE);
      default -> {
        // says nothing of what is asked
      }
    }
  }

  /** Sound that is there; a recorder that lost power wrote 0, or more than there is. */
  private long present(long body, long said) throws IOException {
    long there = bytes.length() - body;
    return said <= 0 || said > there ? there : said;
  }

  private ClipFacts facts() throws UnreadableClipException {
    if (format.isEmpty() || dataBytes < 0) {
      throw new UnreadableClipException("has no sound in it");
    }
    int rate = format.get().samplesPerSecond();
    Optional<Seconds> sinceMidnight =
        startSample == 0 ? Optional.empty() : Optional.of(Seconds.of(startSample, rate));
    return new ClipFacts(
        Seconds.of(dataBytes / format.get().bytesASample(), rate),
        Optional.empty(),
        Optional.of(new Sound(rate)),
        true,
        sinceMidnight);
  }
}
