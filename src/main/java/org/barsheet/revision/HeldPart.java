package org.barsheet.revision;

import java.util.List;

/**
 * A part as played.
 *
 * @param name unique in its score
 * @param drums whether its pitches mean drums
 * @param bars its notes bar by bar, in order of time, then pitch; an empty list where it rests
 */
public record HeldPart(String name, boolean drums, List<List<BarNote>> bars) {
  public HeldPart {
    bars = List.copyOf(bars);
  }
}
