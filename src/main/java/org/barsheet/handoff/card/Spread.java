package org.barsheet.handoff.card;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Moves labels apart that would cover one another, as little as can be. */
final class Spread {

  /** Labels that stand side by side without room between them. */
  private record Block(double sum, int labels) {
    double middle() {
      return sum / labels;
    }
  }

  private Spread() {}

  /**
   * Places at least a gap apart, in the same order, with the least sum of squared moves: neighbors
   * that come too close are put side by side about their mean (pooling of adjacent violators,
   * isotonic regression).
   *
   * @param wanted in ascending order
   * @param least where the first may stand at the least
   * @param most where the last may stand at the most
   */
  static List<Double> apart(List<Double> wanted, double gap, double least, double most) {
    Deque<Block> blocks = new ArrayDeque<>();
    for (int i = 0; i < wanted.size(); i++) {
      Block block = new Block(wanted.get(i) - i * gap, 1);
      while (!blocks.isEmpty() && blocks.getLast().middle() > block.middle()) {
        Block before = blocks.removeLast();
        block = new Block(before.sum() + block.sum(), before.labels() + block.labels());
      }
      blocks.addLast(block);
    }
    List<Double> places = new ArrayList<>();
    for (Block block : blocks) {
      double lowest = Math.max(least, Math.min(block.middle(), most - (wanted.size() - 1) * gap));
      for (int i = 0; i < block.labels(); i++) {
        places.add(lowest + places.size() * gap);
      }
    }
    return places;
  }
}
