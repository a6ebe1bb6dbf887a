package org.barsheet.handoff;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Timecode;

/**
 * Reads an edit decision list as SMPTE ST 258:2004 describes it: a title, the frame code mode,
 * events of eight fields for a cut, comments after a star; out points exclusive.
 */
final class EdlParser {

  private static final Pattern EVENT =
      Pattern.compile(
          "(\\d{3}) +([A-Z0-9]{1,8}) +(V|A\\d?) +(C) +(\\S{11}) (\\S{11}) (\\S{11}) (\\S{11})");

  record Event(
      int number, String reel, long sourceIn, long sourceOut, long recordIn, long recordOut) {}

  record EditList(String title, boolean dropFrame, List<Event> events, List<String> comments) {}

  private EdlParser() {}

  /** Refuses whatever such a list may not hold. */
  static EditList parse(byte[] bytes, FrameRate rate) {
    StringBuilder text = new StringBuilder();
    for (byte b : bytes) {
      require(b == '\r' || b == '\n' || (b >= 0x20 && b <= 0x7E), "a byte outside ASCII");
      text.append((char) b);
    }
    String[] lines = text.toString().split("\r\n", -1);
    require(lines[0].startsWith("TITLE: ") && lines[0].length() <= 77, "title: " + lines[0]);
    require(lines[1].matches("FCM: (NON-)?DROP FRAME"), "mode: " + lines[1]);
    boolean drop = lines[1].equals("FCM: DROP FRAME");
    require(drop == rate.dropFrame(), "the mode is not the rate's");
    List<Event> events = new ArrayList<>();
    List<String> comments = new ArrayList<>();
    for (int i = 2; i < lines.length - 1; i++) {
      require(lines[i].length() <= 80, "a line of more than 80 characters");
      if (lines[i].startsWith("*")) {
        comments.add(lines[i].substring(1).strip());
      } else {
        events.add(event(lines[i], rate, events.size() + 1));
      }
    }
    require(lines[lines.length - 1].isEmpty(), "the last line ends");
    return new EditList(lines[0].substring(7), drop, events, comments);
  }

  private static Event event(String line, FrameRate rate, int number) {
    Matcher fields = EVENT.matcher(line);
    require(fields.matches(), "event: " + line);
    require(Integer.parseInt(fields.group(1)) == number, "event number: " + line);
    Event event =
        new Event(
            number,
            fields.group(2),
            frame(rate, fields.group(5)),
            frame(rate, fields.group(6)),
            frame(rate, fields.group(7)),
            frame(rate, fields.group(8)));
    require(
        event.sourceOut() - event.sourceIn() == event.recordOut() - event.recordIn(),
        "source and record differ in length: " + line);
    require(event.recordOut() > event.recordIn(), "no length: " + line);
    return event;
  }

  private static long frame(FrameRate rate, String label) {
    return Timecode.parse(rate, label).frame();
  }

  private static void require(boolean rule, String broken) {
    if (!rule) {
      throw new AssertionError("no edit decision list: " + broken);
    }
  }
}
