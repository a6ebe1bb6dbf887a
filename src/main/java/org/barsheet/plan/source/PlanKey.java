package org.barsheet.plan.source;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A key of the plan.
 *
 * @param name as written
 * @param note one sentence that teaches it
 * @param example a value it may have
 */
public record PlanKey(String name, String note, String example) {

  /** The names of keys, parted by commas. */
  public static String names(List<PlanKey> keys) {
    return keys.stream().map(PlanKey::name).collect(Collectors.joining(", "));
  }
}
