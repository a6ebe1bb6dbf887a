package org.barsheet.handoff;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a WebVTT file by the authoring rules of the W3C text ("WebVTT: The Web Video Text Tracks
 * Format", sections 4.1 "WebVTT file structure" and 4.2 "Types of WebVTT cue payload") and refuses
 * whatever an author must not write.
 */
final class VttParser {

  private static final String STAMP = "(?:(\\d{2,}):)?([0-5]\\d):([0-5]\\d)\\.(\\d{3})";
  private static final Pattern TIMINGS = Pattern.compile(STAMP + "[ \\t]+-->[ \\t]+" + STAMP);
  private static final Pattern REFERENCE =
      Pattern.compile("&(?:amp|lt|gt|quot|nbsp|lrm|rlm|#\\d+|#x[0-9A-Fa-f]+);");

  record ParsedCue(String identifier, long startMilliseconds, long endMilliseconds, String text) {}

  record ParsedFile(List<String> notes, List<ParsedCue> cues) {}

  private VttParser() {}

  static ParsedFile parse(String file) {
    require(file.indexOf('\0') < 0, "a NUL character");
    String[] blocks = file.replace("\r\n", "\n").replace('\r', '\n').split("\n\n+", -1);
    require(blocks[0].equals("WEBVTT"), "the signature: " + blocks[0]);
    require(file.endsWith("\n"), "the last line ends");
    List<String> notes = new ArrayList<>();
    List<ParsedCue> cues = new ArrayList<>();
    for (int i = 1; i < blocks.length; i++) {
      String block = blocks[i].strip();
      if (block.startsWith("NOTE")) {
        require(!block.contains("-->"), "an arrow in a comment");
        notes.add(block.substring(4).strip());
      } else {
        cues.add(cue(block));
      }
    }
    checkOrder(cues);
    return new ParsedFile(notes, cues);
  }

  private static ParsedCue cue(String block) {
    String[] lines = block.split("\n", -1);
    int timing = lines[0].contains("-->") ? 0 : 1;
    require(lines.length > timing, "no timings: " + block);
    Matcher stamps = TIMINGS.matcher(lines[timing]);
    require(stamps.matches(), "timings: " + lines[timing]);
    List<String> payload = new ArrayList<>();
    for (int i = timing + 1; i < lines.length; i++) {
      payload.add(lines[i]);
    }
    String text = String.join("\n", payload);
    require(!text.isEmpty(), "an empty payload");
    require(!text.contains("-->"), "an arrow in the payload");
    return new ParsedCue(
        timing == 0 ? "" : lines[0], milliseconds(stamps, 1), milliseconds(stamps, 5), plain(text));
  }

  private static long milliseconds(Matcher stamps, int group) {
    String hours = stamps.group(group);
    long seconds =
        (hours == null ? 0 : Long.parseLong(hours)) * 3600
            + Long.parseLong(stamps.group(group + 1)) * 60
            + Long.parseLong(stamps.group(group + 2));
    return seconds * 1000 + Long.parseLong(stamps.group(group + 3));
  }

  /** Cue text and chapter titles without tags: neither '<' nor an '&' that begins no reference. */
  private static String plain(String text) {
    require(text.indexOf('<') < 0, "a tag: " + text);
    require(REFERENCE.matcher(text).replaceAll("").indexOf('&') < 0, "a bare ampersand: " + text);
    return text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
  }

  private static void checkOrder(List<ParsedCue> cues) {
    Set<String> identifiers = new HashSet<>();
    long latestStart = 0;
    for (ParsedCue cue : cues) {
      require(cue.endMilliseconds() > cue.startMilliseconds(), "a cue ends before it starts");
      require(cue.startMilliseconds() >= latestStart, "cues out of order");
      require(
          cue.identifier().isEmpty() || identifiers.add(cue.identifier()),
          "an identifier twice: " + cue.identifier());
      latestStart = cue.startMilliseconds();
    }
  }

  /** The rule of chapter files: two cues are either nested or apart. */
  static void requireNestedOrApart(List<ParsedCue> cues) {
    for (ParsedCue one : cues) {
      for (ParsedCue other : cues) {
        boolean crosses =
            one.startMilliseconds() < other.startMilliseconds()
                && other.startMilliseconds() < one.endMilliseconds()
                && one.endMilliseconds() < other.endMilliseconds();
        require(!crosses, "chapters overlap in part");
      }
    }
  }

  private static void require(boolean rule, String broken) {
    if (!rule) {
      throw new AssertionError("not WebVTT: " + broken);
    }
  }
}
