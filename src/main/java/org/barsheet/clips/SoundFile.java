package org.barsheet.clips;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** Tells a file with sound in it from any other by its first bytes and its headers. */
public final class SoundFile {

  /** FLAC (RFC 9639, 6), Ogg (RFC 3533, 6), a tag before MPEG audio (ID3v2.4.0, 3.1). */
  private static final String NAMED_FIRST = "fLaC|OggS|ID3.";

  private SoundFile() {}

  /**
   * Checks that a file holds sound: WAV, AIFF, FLAC, MP3, Ogg, M4A, MP4 or MOV.
   *
   * @throws UnreadableClipException if it is of another kind, silent, or damaged
   * @throws IOException if the disk does not give it
   */
  public static void check(Path file) throws IOException, UnreadableClipException {
    OpenClip.read(file, SoundFile::checked);
  }

  private static ClipBytes checked(OpenClip clip) throws IOException, UnreadableClipException {
    ClipBytes bytes = clip.bytes();
    if (clip.isWave()) {
      clip.wave();
    } else if (!bytes.fourLetters(0).matches(NAMED_FIRST)
        && !isAiff(bytes)
        && !isMpegAudio(bytes)) {
      checkMovie(bytes);
    }
    return bytes;
  }

  /** AIFF 1.3 and AIFF-C: a FORM of that type. */
  static boolean isAiff(ClipBytes bytes) throws IOException, UnreadableClipException {
    return bytes.fourLetters(0).equals("FORM")
        && bytes.fourLetters(8).toUpperCase(Locale.ROOT).startsWith("AIF");
  }

  /**
   * Eleven bits set, no reserved version, layer II or III (ISO/IEC 11172-3, 2.4.1.3), or twelve
   * bits set and layer 0, which is AAC (ISO/IEC 13818-7, 6.2).
   */
  static boolean isMpegAudio(ClipBytes bytes) throws IOException, UnreadableClipException {
    int head = bytes.unsigned16(0);
    int layer = head >> 1 & 3;
    boolean layered = (head & 0xFFE0) == 0xFFE0 && (head >> 3 & 3) != 1;
    boolean aac = (head & 0xFFF0) == 0xFFF0 && layer == 0;
    return aac || (layered && (layer == 1 || layer == 2));
  }

  private static void checkMovie(ClipBytes bytes) throws IOException, UnreadableClipException {
    if (!bytes.fourLetters(4).matches("ftyp|moov|mdat|wide|free|skip|pnot")) {
      throw new UnreadableClipException("is not a sound file");
    }
    if (!MovieHead.of(bytes).hasSound()) {
      throw new UnreadableClipException("has no sound in it");
    }
  }
}
