package org.barsheet.exposure;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.timing.Shot;

/** What has to be photographed: each movement once, however many reveals show its photographs. */
public final class Movements {

  /** A movement while its reveals are gathered. */
  private static final class Draft {
    private final MovementKey key;
    private final Set<String> openings = new LinkedHashSet<>();
    private int photographs;

    Draft(MovementKey key) {
      this.key = key;
    }

    void add(Reveal reveal) {
      openings.add(reveal.opening());
      photographs = Math.max(photographs, reveal.photographs());
    }

    String firstOpening() {
      return openings.iterator().next();
    }
  }

  private final Plan plan;
  private final Map<MovementKey, Draft> drafts = new LinkedHashMap<>();
  private final Map<MovementKey, Movement> movements = new LinkedHashMap<>();

  /** Gathers the reveals of all shots, in story order. */
  public Movements(Plan plan, List<Shot> shots) {
    this.plan = plan;
    for (Shot shot : shots) {
      for (Reveal reveal : shot.panel().reveals()) {
        drafts.computeIfAbsent(keyOf(reveal), Draft::new).add(reveal);
      }
    }
    for (Draft draft : drafts.values()) {
      movements.put(draft.key, movement(draft));
    }
  }

  private MovementKey keyOf(Reveal reveal) {
    Opening opening = openingOf(reveal);
    double enlarged =
        plan.workshop().artwork().model(opening.model()).map(Artwork.Model::enlarged).orElse(1.0);
    return MovementKey.of(reveal, opening, enlarged);
  }

  /** The opening that a reveal moves. */
  public Opening openingOf(Reveal reveal) {
    return plan.workshop().opening(reveal.opening()).orElseThrow();
  }

  /** The movement whose photographs a reveal shows. */
  public Movement of(Reveal reveal) {
    return Objects.requireNonNull(movements.get(keyOf(reveal)), "a reveal of another plan");
  }

  /** Every movement, in story order. */
  public List<Movement> all() {
    return List.copyOf(movements.values());
  }

  private Movement movement(Draft draft) {
    return Movement.of(
        unused(nameOf(draft)),
        plan.workshop().opening(draft.firstOpening()).orElseThrow(),
        List.copyOf(draft.openings),
        plan.workshop().artwork(),
        plan.workshop().hand(),
        draft.key.slow(),
        draft.key.evenIn(),
        draft.photographs);
  }

  /**
   * The name itself, unless an opening and a model happen to be called alike, or would be one file
   * on disks that do not tell capitals apart.
   */
  private String unused(String name) {
    boolean taken = movements.values().stream().anyMatch(m -> m.name().equalsIgnoreCase(name));
    return taken ? unused(name + "-opening") : name;
  }

  /**
   * A name that other reveals do not change: the model where all its openings move alike, else the
   * opening. Where one thing moves in several ways, the way with most photographs has the plain
   * name and the others say how they differ.
   */
  private String nameOf(Draft draft) {
    boolean shared = draft.key.opening().isEmpty();
    List<Draft> siblings = drafts.values().stream().filter(d -> isSameThing(d, draft)).toList();
    Set<String> openings = new LinkedHashSet<>();
    siblings.forEach(d -> openings.addAll(d.openings));
    boolean alike = siblings.size() == 1 || openings.size() == 1;
    String plain = shared && alike ? draft.key.model() : draft.firstOpening();
    List<Draft> rivals =
        siblings.stream().filter(d -> alike || d.firstOpening().equals(plain)).toList();
    return isLongest(draft, rivals) ? plain : plain + "-" + difference(draft, rivals);
  }

  private static boolean isSameThing(Draft one, Draft other) {
    return one.key.model().equals(other.key.model())
        && one.key.opening().equals(other.key.opening());
  }

  private static boolean isLongest(Draft draft, List<Draft> rivals) {
    for (Draft rival : rivals) {
      boolean earlier = rivals.indexOf(rival) < rivals.indexOf(draft);
      if (rival.photographs > draft.photographs
          || (rival.photographs == draft.photographs && earlier)) {
        return false;
      }
    }
    return true;
  }

  private static String difference(Draft draft, List<Draft> rivals) {
    String slow = "slow-" + draft.key.slow().word();
    boolean slowTells = rivals.stream().filter(d -> d.key.slow() == draft.key.slow()).count() == 1;
    return slowTells ? slow : slow + "-even-" + draft.key.evenIn().name().toLowerCase(Locale.ROOT);
  }
}
