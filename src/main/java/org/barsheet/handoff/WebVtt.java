package org.barsheet.handoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;

/**
 * Builds a WebVTT file (W3C, "WebVTT: The Web Video Text Tracks Format"). Times run from the film's
 * first frame; cues must be added in order of their start.
 */
final class WebVtt {

  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

  private final StringBuilder text = new StringBuilder("WEBVTT\n");
  private final Set<String> identifiers = new HashSet<>();
  private final FrameRate rate;

  WebVtt(FrameRate rate) {
    this.rate = rate;
  }

  /** A remark for people who open the file. */
  void note(String remark) {
    text.append("\nNOTE ").append(oneLine(remark)).append('\n');
  }

  /**
   * A cue.
   *
   * @param identifier its name; made unique in the file
   * @param frames film frames from 0, at least one
   * @param line what it says, on one line
   */
  void cue(String identifier, FrameSpan frames, String line) {
    text.append('\n').append(unique(oneLine(identifier))).append('\n');
    text.append(timestamp(frames.start())).append(" --> ");
    text.append(timestamp(frames.endExclusive())).append('\n');
    text.append(escaped(line)).append('\n');
  }

  private String unique(String identifier) {
    String candidate = identifier;
    for (int copy = 2; !identifiers.add(candidate); copy++) {
      candidate = identifier + " (" + copy + ")";
    }
    return candidate;
  }

  /** {@code 00:01:02.345}: a frame's beginning to the nearest millisecond. */
  private String timestamp(long frame) {
    BigDecimal exact = rate.startOf(frame).toDecimal(9).multiply(THOUSAND);
    long milliseconds = exact.setScale(0, RoundingMode.HALF_UP).longValueExact();
    long seconds = milliseconds / 1000;
    return two(seconds / 3600)
        + ":"
        + two(seconds / 60 % 60)
        + ":"
        + two(seconds % 60)
        + "."
        + Long.toString(1000 + milliseconds % 1000).substring(1);
  }

  private static String two(long number) {
    return (number < 10 ? "0" : "") + number;
  }

  /** Neither a line break nor the arrow that would start another cue, and never empty. */
  private static String oneLine(String words) {
    String line = words.replaceAll("\\p{Cntrl}+", " ").replace("-->", "→").strip();
    return line.isEmpty() ? "-" : line;
  }

  private static String escaped(String words) {
    return oneLine(words).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  byte[] bytes() {
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
