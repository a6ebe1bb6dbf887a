package org.barsheet.clock;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.input.SyntaxException;

/**
 * A timecode label HH:MM:SS:FF of a 24-hour day. Drop-frame skips labels, never frames: ;00 and ;01
 * (;00 to ;03 at 59.94) at the start of every minute but each tenth (SMPTE ST 12-1, through
 * OpenTimelineIO {@code rationalTime.cpp} and ffmpeg {@code timecode.c}).
 *
 * @param rate what is counted
 * @param hours 0 to 23
 * @param minutes 0 to 59
 * @param seconds 0 to 59
 * @param frames 0 to nominal rate − 1, not a label that drop-frame skips
 */
public record Timecode(FrameRate rate, int hours, int minutes, int seconds, int frames) {

  private static final Pattern LABEL =
      Pattern.compile("(\\d{1,2}):(\\d{1,2}):(\\d{1,2})([:;])(\\d{1,2})");

  public Timecode {
    boolean inRange =
        hours >= 0
            && hours < 24
            && minutes >= 0
            && minutes < 60
            && seconds >= 0
            && seconds < 60
            && frames >= 0
            && frames < rate.nominal();
    if (!inRange || isDropped(rate, minutes, seconds, frames)) {
      throw new IllegalArgumentException("no timecode label at " + rate);
    }
  }

  private static boolean isDropped(FrameRate rate, int minutes, int seconds, int frames) {
    return frames < rate.droppedPerMinute() && seconds == 0 && minutes % 10 != 0;
  }

  /**
   * The label of a frame counted from 00:00:00:00; frames beyond a day, or before it, wrap round.
   */
  public static Timecode ofFrame(FrameRate rate, long frame) {
    long inDay = Math.floorMod(frame, rate.framesPerDay());
    long label = inDay + skippedLabels(rate, inDay);
    int nominal = rate.nominal();
    long wholeSeconds = label / nominal;
    return new Timecode(
        rate,
        (int) (wholeSeconds / 3600),
        (int) (wholeSeconds / 60 % 60),
        (int) (wholeSeconds % 60),
        (int) (label % nominal));
  }

  /** Labels that drop-frame skips before a frame of the day (ffmpeg {@code timecode.c}). */
  private static long skippedLabels(FrameRate rate, long frame) {
    long drop = rate.droppedPerMinute();
    if (drop == 0) {
      return 0;
    }
    long perMinute = 60L * rate.nominal() - drop;
    long perTenMinutes = 600L * rate.nominal() - 9 * drop;
    long inTen = frame % perTenMinutes;
    long inThisTen = inTen < drop ? 0 : drop * ((inTen - drop) / perMinute);
    return 9 * drop * (frame / perTenMinutes) + inThisTen;
  }

  /**
   * Frames from another label of the same rate to this one, within half a day of it: what begins
   * before midnight goes on after it.
   */
  public long framesSince(Timecode other) {
    long day = rate.framesPerDay();
    return Math.floorMod(frame() - other.frame() + day / 2, day) - day / 2;
  }

  /**
   * Reads a label. Before the frames {@code ;} is accepted at drop-frame rates only, {@code :} at
   * all.
   *
   * @throws SyntaxException if it is no label of that rate, or one that drop-frame skips
   */
  public static Timecode parse(FrameRate rate, String text) {
    String stripped = text.strip();
    Matcher label = LABEL.matcher(stripped);
    if (!label.matches()) {
      throw new SyntaxException(
          stripped,
          0,
          "'" + stripped + "' is not a timecode",
          "write hours:minutes:seconds:frames, 01:00:12:00");
    }
    if (label.group(4).equals(";") && !rate.dropFrame()) {
      throw new SyntaxException(
          stripped,
          label.start(4),
          "';' means drop-frame, and " + rate + " fps doesn't use it",
          "write ':' before the frames" + orDropFrame(rate));
    }
    int hours = part(stripped, label, 1, 24, "hours");
    int minutes = part(stripped, label, 2, 60, "minutes");
    int seconds = part(stripped, label, 3, 60, "seconds");
    int frames = part(stripped, label, 5, rate.nominal(), "frames at " + rate);
    if (isDropped(rate, minutes, seconds, frames)) {
      throw new SyntaxException(
          stripped,
          label.start(5),
          "drop-frame counting skips this label",
          "the next label there is "
              + new Timecode(rate, hours, minutes, seconds, rate.droppedPerMinute()));
    }
    return new Timecode(rate, hours, minutes, seconds, frames);
  }

  /** Where the same rate also counts in drop-frame, its name in the plan. */
  private static String orDropFrame(FrameRate rate) {
    return rate.denominator() != 1 && rate.nominal() % 30 == 0
        ? ", or choose frame-rate " + rate + "df"
        : "";
  }

  private static int part(String text, Matcher label, int group, int limit, String what) {
    int value = Integer.parseInt(label.group(group));
    if (value >= limit) {
      throw new SyntaxException(
          text,
          label.start(group),
          value + " is too many",
          what + " run from 00 to " + (limit - 1));
    }
    return value;
  }

  /** Frames from 00:00:00:00 to this label. */
  public long frame() {
    long totalMinutes = 60L * hours + minutes;
    long label = (totalMinutes * 60 + seconds) * rate.nominal() + frames;
    return label - rate.droppedPerMinute() * (totalMinutes - totalMinutes / 10);
  }

  /** {@code 01:00:12:00}, or {@code 01:00:12;00} where labels are dropped. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(11);
    two(text, hours).append(':');
    two(text, minutes).append(':');
    two(text, seconds).append(rate.dropFrame() ? ';' : ':');
    return two(text, frames).toString();
  }

  private static StringBuilder two(StringBuilder text, int number) {
    return text.append((char) ('0' + number / 10)).append((char) ('0' + number % 10));
  }
}
