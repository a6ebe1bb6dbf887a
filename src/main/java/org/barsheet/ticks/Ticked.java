package org.barsheet.ticks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Everything people ticked, struck and noted, as they left it.
 *
 * @param ticks in the order they were made, as far as that is known
 * @param notes what was written about photographs, in the order found
 * @param unread what nobody can make out, in sentences: where it stands and what is wrong
 * @param earlier what each photograph of the run before showed: name to likeness
 */
public record Ticked(
    List<Tick> ticks, List<Note> notes, List<Unread> unread, Map<String, String> earlier) {

  public static final Ticked NOTHING = new Ticked(List.of(), List.of(), List.of(), Map.of());

  public Ticked {
    ticks = List.copyOf(ticks);
    notes = List.copyOf(notes);
    unread = List.copyOf(unread);
    earlier = Map.copyOf(earlier);
  }

  /** The same with more ticks after them. */
  public Ticked and(List<Tick> more) {
    List<Tick> all = new ArrayList<>(ticks);
    all.addAll(more);
    return new Ticked(all, notes, unread, earlier);
  }

  /**
   * Words about a photograph.
   *
   * @param photograph its name when they were written
   * @param text what they say, not empty
   */
  public record Note(String photograph, String text) {}

  /**
   * Something that is no tick.
   *
   * @param sentence where it stands and what is wrong
   * @param remedy what to do
   */
  public record Unread(String sentence, String remedy) {}
}
