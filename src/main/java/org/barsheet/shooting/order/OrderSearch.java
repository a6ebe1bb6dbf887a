package org.barsheet.shooting.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Looks for the order with the fewest positions of the camera, and of those the fewest flaps cut
 * afresh. What has been taken so far is a node; the node that can still become cheapest goes first,
 * so that the first whole order is the best (best-first search; Hart, Nilsson and Raphael, 1968).
 */
final class OrderSearch {

  /** Nodes weighed before the search is given up: a fraction of a second. */
  private static final int MOST_NODES = 40_000;

  private static final Comparator<Node> CHEAPEST_FIRST =
      Comparator.comparingInt(Node::leastSetups)
          .thenComparingInt(Node::leastFresh)
          .thenComparingInt(node -> -node.path().length)
          .thenComparing(Node::path, Arrays::compare);

  /**
   * Some jobs taken.
   *
   * @param done the jobs, a bit each
   * @param views what the camera sees from where it stands, a bit each
   * @param open how the flaps stand
   * @param path the jobs in order, doubled; one more where a setup begins
   * @param leastSetups positions of the camera in all, at least
   * @param leastFresh flaps cut afresh in all, at least
   */
  @SuppressWarnings("ArrayRecordComponent") // thousands of them; nodes are never compared whole
  private record Node(
      long done,
      int views,
      double[] open,
      int setups,
      int fresh,
      int[] path,
      int leastSetups,
      int leastFresh) {}

  private record Place(long done, int views) {}

  private final Needs needs;
  private final ViewGroups groups;
  private final long all;
  private final PriorityQueue<Node> open = new PriorityQueue<>(CHEAPEST_FIRST);
  private final Map<Place, List<Node>> seen = new HashMap<>();
  private int nodes;

  OrderSearch(Needs needs, ViewGroups groups) {
    this.needs = needs;
    this.groups = groups;
    this.all = needs.jobs() == Long.SIZE ? -1 : (1L << needs.jobs()) - 1;
  }

  /** Setups of jobs, in order; empty where there are too many orders to weigh. */
  Optional<List<List<Integer>>> best() {
    add(node(0, 0, new double[needs.flaps()], 0, 0, new int[0]));
    while (nodes < MOST_NODES) {
      Node node = open.remove();
      if (node.done() == all) {
        return Optional.of(setups(node.path()));
      }
      for (int job = 0; job < needs.jobs(); job++) {
        if ((node.done() >> job & 1) == 0) {
          goOn(node, job);
        }
      }
    }
    return Optional.empty();
  }

  private void goOn(Node node, int job) {
    int view = 1 << needs.view(job);
    boolean staysThere = node.views() != 0 && groups.isOne(node.views() | view);
    if (staysThere && !isOtherwiseRound(node, job)) {
      add(after(node, job, node.views() | view, false));
    }
    add(after(node, job, view, true));
  }

  /**
   * Of two jobs of a setup that do not matter to each other the earlier in the story goes first.
   */
  private boolean isOtherwiseRound(Node node, int job) {
    int last = node.path()[node.path().length - 1];
    return last % 2 == 0 && last / 2 > job && needs.areApart(last / 2, job);
  }

  private Node after(Node node, int job, int views, boolean begins) {
    int[] path = Arrays.copyOf(node.path(), node.path().length + 1);
    path[path.length - 1] = 2 * job + (begins ? 1 : 0);
    return node(
        node.done() | 1L << job,
        views,
        needs.after(job, node.open()),
        node.setups() + (begins ? 1 : 0),
        node.fresh() + needs.fresh(job, node.open()),
        path);
  }

  private Node node(long done, int views, double[] flaps, int setups, int fresh, int[] path) {
    nodes++;
    long left = all & ~done;
    int unseen = views;
    for (long jobs = left; jobs != 0; jobs &= jobs - 1) {
      unseen |= 1 << needs.view(Long.numberOfTrailingZeros(jobs));
    }
    int more = groups.fewest(unseen) - (views == 0 ? 0 : 1);
    int least = needs.leastFresh(left, flaps);
    return new Node(done, views, flaps, setups, fresh, path, setups + more, fresh + least);
  }

  /**
   * Keeps a node unless another stands where it stands for no more than it would cost to follow.
   */
  private void add(Node node) {
    List<Node> there =
        seen.computeIfAbsent(new Place(node.done(), node.views()), place -> new ArrayList<>());
    if (there.stream().noneMatch(other -> isNoDearer(other, node))) {
      there.removeIf(other -> isNoDearer(node, other));
      there.add(node);
      open.add(node);
    }
  }

  private static boolean isNoDearer(Node one, Node other) {
    int tooFar = 0;
    for (int flap = 0; flap < one.open().length; flap++) {
      tooFar += one.open()[flap] > other.open()[flap] ? 1 : 0;
    }
    return one.setups() < other.setups()
        || (one.setups() == other.setups() && one.fresh() + tooFar <= other.fresh());
  }

  private static List<List<Integer>> setups(int[] path) {
    List<List<Integer>> setups = new ArrayList<>();
    for (int step : path) {
      if (step % 2 == 1) {
        setups.add(new ArrayList<>());
      }
      setups.get(setups.size() - 1).add(step / 2);
    }
    return setups;
  }
}
