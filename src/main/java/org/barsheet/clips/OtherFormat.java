package org.barsheet.clips;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A recording in a format whose headers aren't read here but that only wants converting. The
 * commands are for ffmpeg.
 *
 * @param name what people call the format
 * @param options between the file and what comes of it
 * @param ending of what comes of it
 */
record OtherFormat(String name, String options, String ending) {

  /** Matroska and WebM (RFC 8794, 11.2), and Material Exchange (SMPTE ST 377-1). */
  private static final long EBML = 0x1A45DFA3L;

  private static final long MXF = 0x060E2B34L;

  /** The name of the kind stands within so many bytes of an EBML header. */
  private static final int EBML_HEAD = 64;

  private static final String KEEP = "-c copy";
  private static final String SOUND = "-ar 48000 -c:a pcm_s24le";
  private static final String VIDEO = "-c:v libx264 -crf 12 -c:a pcm_s24le";

  /** The format of a recording by its first bytes, where it is one of these. */
  static Optional<OtherFormat> of(ClipBytes bytes) throws IOException, UnreadableClipException {
    String first = bytes.fourLetters(0);
    long number = bytes.unsigned32(0);
    if (number == EBML) {
      return Optional.of(isWebm(bytes) ? film("WebM", VIDEO) : film("MKV", KEEP));
    }
    if (number == MXF) {
      return Optional.of(film("MXF", KEEP));
    }
    if (first.equals("RIFF") && bytes.fourLetters(8).equals("AVI ")) {
      return Optional.of(film("AVI", VIDEO));
    }
    return sound(bytes, first);
  }

  private static Optional<OtherFormat> sound(ClipBytes bytes, String first)
      throws IOException, UnreadableClipException {
    if (first.equals("fLaC")) {
      return Optional.of(sound("FLAC"));
    }
    if (first.equals("OggS")) {
      return Optional.of(sound("Ogg"));
    }
    if (SoundFile.isAiff(bytes)) {
      return Optional.of(sound("AIFF"));
    }
    return first.startsWith("ID3") || SoundFile.isMpegAudio(bytes)
        ? Optional.of(sound("MP3 or AAC"))
        : Optional.empty();
  }

  private static boolean isWebm(ClipBytes bytes) throws IOException, UnreadableClipException {
    int length = (int) Math.min(EBML_HEAD, bytes.length());
    StringBuilder letters = new StringBuilder();
    for (int place = 0; place + 4 <= length; place += 4) {
      letters.append(bytes.fourLetters(place));
    }
    return letters.indexOf("webm") >= 0;
  }

  private static OtherFormat film(String name, String options) {
    return new OtherFormat(name, options, ".mov");
  }

  private static OtherFormat sound(String name) {
    return new OtherFormat(name, SOUND, ".wav");
  }

  /** What a person is told of a file in it. */
  UnreadableClipException of(Path file) {
    String whole = String.valueOf(file.getFileName());
    int dot = whole.lastIndexOf('.');
    String made = (dot > 0 ? whole.substring(0, dot) : whole) + ending;
    return new UnreadableClipException(
        "is in another format: " + name,
        "convert it: ffmpeg -i " + quoted(whole) + " " + options + " " + quoted(made));
  }

  private static String quoted(String name) {
    return name.matches("[\\w.-]+") ? name : "\"" + name + "\"";
  }
}
