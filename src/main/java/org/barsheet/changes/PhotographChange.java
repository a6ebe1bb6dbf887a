package org.barsheet.changes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.barsheet.changes.LaidFilm.LaidExposure;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;

/**
 * Whether a photograph that a film shows was photographed for its last plan.
 *
 * @param photograph its permanent name
 * @param use what is to be done
 * @param progress share of its movement done in it, 0 to 1
 * @param instead the photograph of the last plan that comes nearest, for one that is resampled
 * @param error how far that one is from it, in share of the movement; 0 to 0.02
 */
public record PhotographChange(
    String photograph, Use use, BigDecimal progress, Optional<String> instead, BigDecimal error) {

  /** How near a photograph must be to stand in for another: 2 % of the movement. */
  private static final BigDecimal NEAR = new BigDecimal("0.02");

  /** Two shares written to six decimals that are the same. */
  private static final BigDecimal SAME = new BigDecimal("0.000002");

  /** What is to be done for a photograph. */
  public enum Use {
    /** The photograph of this name shows just this. */
    STILL_SERVES,
    /** A photograph of another name comes near enough. */
    RESAMPLE,
    /** There is no such photograph, or the one of this name shows something else. */
    TAKE,
    /** The photograph is not shown any more. */
    NOT_SHOWN
  }

  /** The movement it is of. */
  String movement() {
    return photograph.substring(0, photograph.lastIndexOf(' '));
  }

  /** Every photograph shown before or now, in order of name within order of first showing. */
  static List<PhotographChange> between(List<LaidShot> before, List<LaidShot> now) {
    Map<String, Map<String, BigDecimal>> was = byMovement(before);
    Map<String, Map<String, BigDecimal>> is = byMovement(now);
    List<PhotographChange> changes = new ArrayList<>();
    is.forEach(
        (movement, photographs) -> {
          Map<String, BigDecimal> taken = was.getOrDefault(movement, Map.of());
          photographs.forEach((name, progress) -> changes.add(of(name, progress, taken)));
        });
    was.forEach(
        (movement, photographs) -> {
          Map<String, BigDecimal> shown = is.getOrDefault(movement, Map.of());
          photographs.forEach(
              (name, progress) -> {
                if (!shown.containsKey(name)) {
                  changes.add(
                      new PhotographChange(
                          name, Use.NOT_SHOWN, progress, Optional.empty(), BigDecimal.ZERO));
                }
              });
        });
    return List.copyOf(changes);
  }

  private static PhotographChange of(
      String name, BigDecimal progress, Map<String, BigDecimal> taken) {
    BigDecimal own = taken.get(name);
    if (own != null && own.subtract(progress).abs().compareTo(SAME) <= 0) {
      return new PhotographChange(
          name, Use.STILL_SERVES, progress, Optional.empty(), BigDecimal.ZERO);
    }
    Optional<String> nearest = Optional.empty();
    BigDecimal error = NEAR;
    for (Map.Entry<String, BigDecimal> photograph : taken.entrySet()) {
      BigDecimal away = photograph.getValue().subtract(progress).abs();
      if (away.compareTo(error) < 0 || (nearest.isEmpty() && away.compareTo(error) == 0)) {
        nearest = Optional.of(photograph.getKey());
        error = away;
      }
    }
    return nearest.isPresent()
        ? new PhotographChange(name, Use.RESAMPLE, progress, nearest, error)
        : new PhotographChange(name, Use.TAKE, progress, nearest, BigDecimal.ZERO);
  }

  /** Shares of movement by photograph, by movement; a movement on another model is another one. */
  private static Map<String, Map<String, BigDecimal>> byMovement(List<LaidShot> shots) {
    Map<String, Map<String, BigDecimal>> movements = new LinkedHashMap<>();
    for (LaidShot shot : shots) {
      for (LaidReveal reveal : shot.reveals()) {
        for (LaidExposure exposure : reveal.exposures()) {
          String name = exposure.photograph();
          String movement = reveal.model() + "\n" + name.substring(0, name.lastIndexOf(' ') + 1);
          movements
              .computeIfAbsent(movement, key -> new TreeMap<>())
              .put(name, exposure.progress());
        }
      }
    }
    return movements;
  }
}
