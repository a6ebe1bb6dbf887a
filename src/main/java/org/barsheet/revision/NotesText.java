package org.barsheet.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Notes and beats as one line of text each, for files: {@code 0:62 48:64|0:65} are two bars, a note
 * being its time and its pitch. Times are in {@linkplain ScoreNotes#UNITS units}.
 */
public final class NotesText {

  private static final String BAR = "|";

  private NotesText() {}

  /** Notes of one bar, or of a return. */
  public static String ofNotes(List<BarNote> notes) {
    return notes.stream().map(n -> n.at() + ":" + n.pitch()).collect(Collectors.joining(" "));
  }

  /** The notes of a part, bar by bar. */
  public static String ofBars(List<List<BarNote>> bars) {
    return bars.stream().map(NotesText::ofNotes).collect(Collectors.joining(BAR));
  }

  /** Where the beats of each bar begin. */
  public static String ofBeats(List<HeldBar> bars) {
    return bars.stream()
        .map(bar -> bar.beats().stream().map(String::valueOf).collect(Collectors.joining(" ")))
        .collect(Collectors.joining(BAR));
  }

  /**
   * Reads the notes of one bar.
   *
   * @throws IllegalArgumentException if it is no such text
   */
  public static List<BarNote> notes(String text) {
    List<BarNote> notes = new ArrayList<>();
    for (String note : words(text)) {
      int colon = note.indexOf(':');
      int pitch = Integer.parseInt(note.substring(colon + 1));
      if (colon < 1 || pitch < 0 || pitch > 127) {
        throw new IllegalArgumentException("no note: " + note);
      }
      notes.add(new BarNote(Long.parseLong(note.substring(0, colon)), pitch));
    }
    return List.copyOf(notes);
  }

  /**
   * Reads the notes of a part.
   *
   * @throws IllegalArgumentException if it is no such text
   */
  public static List<List<BarNote>> bars(String text) {
    return List.of(text.split("\\|", -1)).stream().map(NotesText::notes).toList();
  }

  /**
   * Reads beats bar by bar.
   *
   * @throws IllegalArgumentException if it is no such text
   */
  public static List<List<Long>> beats(String text) {
    return List.of(text.split("\\|", -1)).stream()
        .map(bar -> words(bar).stream().map(Long::valueOf).toList())
        .toList();
  }

  private static List<String> words(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
  }
}
