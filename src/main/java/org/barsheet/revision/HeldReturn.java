package org.barsheet.revision;

import java.util.List;

/**
 * A return of a motif as heard in one version.
 *
 * @param motif name of the motif
 * @param number which return of it, from 1; 0 for a possible one
 * @param parts names of the parts that play it, the leading one first
 * @param notes those of its notes that sound, in order of time; {@code at} counts from tick 0
 */
public record HeldReturn(String motif, int number, List<String> parts, List<BarNote> notes) {

  public HeldReturn {
    parts = List.copyOf(parts);
    notes = List.copyOf(notes);
  }
}
