package org.barsheet.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.score.IntervalWords;

/** What differs between two bars, in words: "other notes in Flute; Cello a tone higher". */
final class BarDifference {

  private final List<String> others = new ArrayList<>();
  private final List<String> lengths = new ArrayList<>();
  private final Map<Integer, List<String>> shifted = new TreeMap<>();
  private final List<String> silent = new ArrayList<>();
  private final List<String> joining = new ArrayList<>();

  private BarDifference() {}

  /**
   * The words.
   *
   * @param was the notes before, by part
   * @param is the notes now, by part
   * @param shifts of the passage around them
   */
  static String words(
      Map<String, List<HeldNote>> was, Map<String, List<HeldNote>> is, PartShifts shifts) {
    BarDifference difference = new BarDifference();
    Set<String> parts = new TreeSet<>(was.keySet());
    parts.addAll(is.keySet());
    for (String part : parts) {
      List<HeldNote> before = was.getOrDefault(part, List.of());
      List<HeldNote> now = is.getOrDefault(part, List.of());
      if (!before.equals(now)) {
        difference.add(part, before, now, shifts);
      }
    }
    return difference.words();
  }

  private void add(String part, List<HeldNote> was, List<HeldNote> is, PartShifts shifts) {
    OptionalInt shift = shifts.of(part, was, is);
    if (is.isEmpty()) {
      silent.add(part);
    } else if (was.isEmpty()) {
      joining.add(part);
    } else if (shift.isPresent()) {
      shifted.computeIfAbsent(shift.getAsInt(), by -> new ArrayList<>()).add(part);
    } else if (onsets(was).equals(onsets(is))) {
      lengths.add(part);
    } else {
      others.add(part);
    }
  }

  /** The notes as they begin, however long they sound. */
  private static List<HeldNote> onsets(List<HeldNote> notes) {
    return notes.stream()
        .map(note -> new HeldNote(note.at(), note.pitch(), BigFraction.ZERO, note.drum()))
        .toList();
  }

  private String words() {
    List<String> words = new ArrayList<>();
    add(words, "different notes in ", others, "");
    add(words, "different note lengths in ", lengths, "");
    shifted.forEach((by, parts) -> add(words, "", parts, " " + IntervalWords.apart(by)));
    add(words, "without ", silent, "");
    add(words, "with ", joining, "");
    return words.isEmpty()
        ? "the same notes in a bar of a different length"
        : String.join("; ", words);
  }

  private static void add(List<String> words, String before, List<String> parts, String after) {
    if (!parts.isEmpty()) {
      words.add(before + String.join(", ", parts) + after);
    }
  }
}
