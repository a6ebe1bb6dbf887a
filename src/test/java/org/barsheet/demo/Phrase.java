package org.barsheet.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of music read from text: {@code C5/4 E5/8 r/8 G5/4+16}. {@code /n} is one nth of a whole
 * note, {@code +} ties values, {@code r} rests, a comma stacks pitches into a chord and {@code |}
 * stands where a bar line is expected.
 *
 * @param sounds the notes in order; those of a chord start together
 * @param barLines ticks from the phrase's start at which a bar line is expected
 * @param length ticks to the end of the last note or rest
 */
public record Phrase(List<Sound> sounds, List<Long> barLines, long length) {

  static final int TICKS_PER_WHOLE = 4 * ScoreFile.TICKS_PER_QUARTER;

  private static final Pattern TOKEN = Pattern.compile("([^/]+)/(\\d+(?:\\+\\d+)*)");
  private static final Pattern PITCH = Pattern.compile("([A-G])([#b]?)(-?\\d)");
  private static final String LETTERS = "C D EF G A B";

  /** One note: ticks from the phrase's start, ticks long, MIDI key. */
  public record Sound(long start, long ticks, int key) {}

  static Phrase parse(String text) {
    List<Sound> sounds = new ArrayList<>();
    List<Long> barLines = new ArrayList<>();
    long now = 0;
    for (String token : text.trim().split("\\s+", -1)) {
      if (token.equals("|")) {
        barLines.add(now);
        continue;
      }
      Matcher matcher = TOKEN.matcher(token);
      if (!matcher.matches()) {
        throw new IllegalArgumentException("not a note: " + token);
      }
      long ticks = ticks(matcher.group(2));
      if (!matcher.group(1).equals("r")) {
        for (String pitch : matcher.group(1).split(",", -1)) {
          sounds.add(new Sound(now, ticks, key(pitch)));
        }
      }
      now += ticks;
    }
    return new Phrase(List.copyOf(sounds), List.copyOf(barLines), now);
  }

  /** The same phrase some octaves higher, or lower if negative. */
  Phrase octaves(int octaves) {
    List<Sound> moved =
        sounds.stream()
            .map(sound -> new Sound(sound.start(), sound.ticks(), sound.key() + 12 * octaves))
            .toList();
    return new Phrase(moved, barLines, length);
  }

  /** The MIDI key of a pitch such as {@code F#4}; middle C, C4, is 60. */
  static int key(String pitch) {
    Matcher matcher = PITCH.matcher(pitch);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("not a pitch: " + pitch);
    }
    int accidental =
        switch (matcher.group(2)) {
          case "#" -> 1;
          case "b" -> -1;
          default -> 0;
        };
    int octave = Integer.parseInt(matcher.group(3));
    return 12 * (octave + 1) + LETTERS.indexOf(matcher.group(1)) + accidental;
  }

  private static long ticks(String values) {
    long ticks = 0;
    for (String value : values.split("\\+", -1)) {
      int part = Integer.parseInt(value);
      if (TICKS_PER_WHOLE % part != 0) {
        throw new IllegalArgumentException("not on the grid: /" + part);
      }
      ticks += TICKS_PER_WHOLE / part;
    }
    return ticks;
  }
}
