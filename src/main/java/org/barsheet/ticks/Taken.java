package org.barsheet.ticks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.plan.Plan;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;

/**
 * What has been photographed so far and what is left.
 *
 * @param photographs every photograph, in the order of work
 * @param renamed ticked photographs that have another name now: name before to name now
 * @param lost ticked photographs that no photograph looks like any more, by name
 * @param disputed photographs of which workbook and phone say different things; they count as to be
 *     taken again
 * @param unread what is no tick
 * @param left the work that is left
 * @param retakes what taking photographs again needs, in the order of work
 */
public record Taken(
    List<TakenPhotograph> photographs,
    Map<String, String> renamed,
    List<String> lost,
    List<String> disputed,
    List<Ticked.Unread> unread,
    Left left,
    List<Retake> retakes) {

  public Taken {
    photographs = List.copyOf(photographs);
    lost = List.copyOf(lost);
    disputed = List.copyOf(disputed);
    unread = List.copyOf(unread);
    retakes = List.copyOf(retakes);
  }

  /** Where nobody ticked anything yet. */
  public static Taken nothing(ShootingPlan shooting, Plan plan) {
    return of(shooting, plan, Ticked.NOTHING);
  }

  /** What ticks say of the photographs of a film. */
  public static Taken of(ShootingPlan shooting, Plan plan, Ticked ticked) {
    return new TakenFinder(shooting, plan, ticked).find();
  }

  /** Whether anybody said anything of any photograph. */
  public boolean isBegun() {
    return photographs.stream().anyMatch(one -> one.mark().isPresent())
        || !lost.isEmpty()
        || !unread.isEmpty();
  }

  /** How many photographs are taken. */
  public int done() {
    return (int) photographs.stream().filter(TakenPhotograph::isTaken).count();
  }

  /** How many have to be taken again. */
  public int again() {
    return (int) photographs.stream().filter(TakenPhotograph::isAgain).count();
  }

  /** Those of a setup, in order. */
  public List<TakenPhotograph> of(Setup setup) {
    return photographs.stream().filter(one -> one.setup() == setup.number()).toList();
  }

  /** What the workbook says of photographs: only those of which it says anything. */
  public Map<String, Mark> inWorkbook(List<String> names) {
    Map<String, Mark> marks = new LinkedHashMap<>();
    for (TakenPhotograph photograph : photographs) {
      photograph
          .workbook()
          .filter(mark -> names.contains(photograph.name()))
          .ifPresent(mark -> marks.put(photograph.name(), mark));
    }
    return marks;
  }

  /** {@code 17 of 29}, {@code 17 of 29, 2 again}, of some photographs; "" where none was ticked. */
  public String words(List<String> names) {
    List<TakenPhotograph> some =
        photographs.stream().filter(one -> names.contains(one.name())).toList();
    long done = some.stream().filter(TakenPhotograph::isTaken).count();
    long again = some.stream().filter(TakenPhotograph::isAgain).count();
    return done + again == 0
        ? ""
        : done + " of " + some.size() + (again == 0 ? "" : ", " + again + " again");
  }

  /** A photograph by its name. */
  public Optional<TakenPhotograph> photograph(String name) {
    return photographs.stream().filter(one -> one.name().equals(name)).findFirst();
  }

  /** What each photograph shows: name to likeness, in the order of work. */
  public Map<String, String> likenesses() {
    Map<String, String> all = new LinkedHashMap<>();
    photographs.forEach(one -> all.put(one.name(), one.likeness()));
    return all;
  }

  /** {@code 112 of 312 ticked}: beside a count of the files that are there. */
  public String ticked() {
    return done() + " of " + photographs.size() + " ticked";
  }

  /** {@code 112 of 312 photographs taken, 3 to take again}. */
  public String words() {
    List<String> words = new ArrayList<>();
    words.add(done() + " of " + photographs.size() + " photographs taken");
    if (again() > 0) {
      words.add(again() + " to take again");
    }
    return String.join(", ", words);
  }
}
