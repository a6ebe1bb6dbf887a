package org.barsheet.shooting.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The order in which jobs are taken. A flap only ever gets more open; one that a later job wants
 * less open is cut afresh for it. Among the orders that keep to this, the one with the fewest
 * positions of the camera is taken, then the fewest flaps cut afresh, then the story's. As no flap
 * is too dear to cut, no position is ever returned to.
 *
 * @param setups jobs taken from one position of the camera, each in order
 * @param fewest whether no order has fewer positions, or as few and fewer fresh flaps; if not,
 *     there were too many orders to weigh
 */
public record WorkOrder(List<List<Integer>> setups, boolean fewest) {

  public WorkOrder {
    setups = setups.stream().map(List::copyOf).toList();
  }

  /**
   * Orders jobs.
   *
   * @param jobs in story order; their views are numbered from 0
   * @param oneView whether one position of the camera serves some views; what serves many of them
   *     serves fewer, and every view alone has one
   */
  public static WorkOrder of(List<Job> jobs, Predicate<List<Integer>> oneView) {
    int views = 1 + jobs.stream().mapToInt(Job::view).max().orElse(-1);
    Needs needs = new Needs(jobs);
    if (jobs.size() <= Long.SIZE && views <= ViewGroups.MOST) {
      Optional<List<List<Integer>>> best =
          new OrderSearch(needs, new ViewGroups(views, oneView)).best();
      if (best.isPresent()) {
        return new WorkOrder(best.get(), true);
      }
    }
    return new WorkOrder(byRule(needs, grouped(needs, oneView)), false);
  }

  /** Each job in the first position that can still serve it. */
  private static List<List<Integer>> grouped(Needs needs, Predicate<List<Integer>> oneView) {
    List<List<Integer>> groups = new ArrayList<>();
    for (int job = 0; job < needs.jobs(); job++) {
      int one = job;
      Optional<List<Integer>> fits =
          groups.stream()
              .filter(
                  group ->
                      oneView.test(
                          IntStream.concat(
                                  group.stream().mapToInt(needs::view),
                                  IntStream.of(needs.view(one)))
                              .distinct()
                              .boxed()
                              .toList()))
              .findFirst();
      List<Integer> group = fits.orElseGet(ArrayList::new);
      group.add(job);
      if (fits.isEmpty()) {
        groups.add(group);
      }
    }
    return groups;
  }

  /** In each position the job next that costs the fewest fresh flaps; of equal ones the first. */
  private static List<List<Integer>> byRule(Needs needs, List<List<Integer>> groups) {
    double[] open = new double[needs.flaps()];
    List<List<Integer>> setups = new ArrayList<>();
    for (List<Integer> group : groups) {
      List<Integer> left = new ArrayList<>(group);
      List<Integer> setup = new ArrayList<>();
      while (!left.isEmpty()) {
        Integer next = cheapest(needs, left, open);
        left.remove(next);
        setup.add(next);
        open = needs.after(next, open);
      }
      setups.add(setup);
    }
    return setups;
  }

  private static Integer cheapest(Needs needs, List<Integer> left, double[] open) {
    Integer cheapest = left.get(0);
    int least = Integer.MAX_VALUE;
    for (Integer job : left) {
      double[] then = needs.after(job, open);
      int cost = needs.fresh(job, open);
      for (Integer other : left) {
        cost += other.equals(job) ? 0 : needs.fresh(other, then);
      }
      if (cost < least) {
        least = cost;
        cheapest = job;
      }
    }
    return cheapest;
  }
}
