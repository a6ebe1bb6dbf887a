package org.barsheet.exposure;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How much of one opening's hole is uncovered, frame by frame, seen from straight above. */
public final class Uncovering {

  private final NavigableMap<Long, Double> shares;

  private Uncovering(NavigableMap<Long, Double> shares) {
    this.shares = shares;
  }

  public static Uncovering of(
      List<PlannedReveal> reveals, List<Movement> movements, String opening) {
    Map<String, Movement> byName =
        movements.stream().collect(Collectors.toMap(Movement::name, Function.identity()));
    NavigableMap<Long, Double> shares = new TreeMap<>();
    for (PlannedReveal reveal : reveals) {
      if (reveal.opening().name().equals(opening)) {
        Movement movement = Objects.requireNonNull(byName.get(reveal.movement()));
        for (Exposure exposure : reveal.exposures()) {
          int photograph = exposure.photograph().number();
          double share = movement.photographs().get(photograph).measures().uncovered();
          shares.put(exposure.frames().start(), share);
        }
      }
    }
    return new Uncovering(shares);
  }

  /**
   * Share of the hole that is uncovered on a film frame, 0 to 1. Between reveals an opening stays
   * as the last one left it; before the first it is closed.
   */
  public double at(long frame) {
    Map.Entry<Long, Double> since = shares.floorEntry(frame);
    return since == null ? 0 : since.getValue();
  }
}
