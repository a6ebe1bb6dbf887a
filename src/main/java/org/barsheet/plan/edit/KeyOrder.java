package org.barsheet.plan.edit;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanKeys;

/** The order in which people write the keys of a plan's tables. */
final class KeyOrder {

  private static final List<List<String>> TABLES =
      List.of(
              PlanKeys.ROOT,
              PlanKeys.FILM,
              PlanKeys.MUSIC,
              PlanKeys.PIN,
              PlanKeys.MOTIF,
              PlanKeys.HEARD_AT,
              PlanKeys.ALSO,
              PlanKeys.ARTWORK,
              PlanKeys.MODEL,
              PlanKeys.CAMERA,
              PlanKeys.SHOOT,
              PlanKeys.HAND,
              PlanKeys.TOLERANCES,
              PlanKeys.OPENING,
              PlanKeys.PERFORMER,
              PlanKeys.DELIVER,
              PlanKeys.CLIP,
              PlanKeys.CLAP,
              PlanKeys.PANEL,
              PlanKeys.FIELD,
              PlanKeys.REVEAL,
              PlanKeys.APPEARS)
          .stream()
          .map(keys -> keys.stream().map(PlanKey::name).toList())
          .toList();

  private KeyOrder() {}

  /**
   * Index of the key that a new one is written behind: the last in the table that comes before it,
   * or the last of all.
   *
   * @param table not empty
   */
  static int before(YamlNode.Keyed table, String key) {
    List<String> there = table.members().stream().map(YamlNode.Member::key).toList();
    int last = there.size() - 1;
    List<String> order =
        TABLES.stream()
            .filter(keys -> keys.contains(key))
            .max(Comparator.comparingLong(keys -> there.stream().filter(keys::contains).count()))
            .orElse(List.of());
    int own = order.indexOf(key);
    return IntStream.rangeClosed(0, last)
        .filter(i -> order.contains(there.get(i)) && order.indexOf(there.get(i)) < own)
        .reduce((one, later) -> later)
        .orElse(last);
  }
}
