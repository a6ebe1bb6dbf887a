package org.barsheet.pixels;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Pixels that hang together, by a side or a corner.
 *
 * @param box they lie in
 * @param pixels how many they are
 * @param mean of their values
 */
record Patch(Box box, int pixels, double mean) {

  double length() {
    return Math.max(box.width(), box.height());
  }

  /** All patches of values other than 0. */
  static List<Patch> all(Plane plane) {
    boolean[] seen = new boolean[plane.width() * plane.height()];
    List<Patch> patches = new ArrayList<>();
    for (int y = 0; y < plane.height(); y++) {
      for (int x = 0; x < plane.width(); x++) {
        if (plane.at(x, y) != 0 && !seen[y * plane.width() + x]) {
          patches.add(from(plane, seen, x, y));
        }
      }
    }
    return patches;
  }

  private static Patch from(Plane plane, boolean[] seen, int startX, int startY) {
    Deque<Integer> open = new ArrayDeque<>();
    int width = plane.width();
    open.push(startY * width + startX);
    seen[startY * width + startX] = true;
    Box box = new Box(startX, startY, startX + 1, startY + 1);
    int pixels = 0;
    double sum = 0;
    while (!open.isEmpty()) {
      int at = open.pop();
      int x = at % width;
      int y = at / width;
      pixels++;
      sum += plane.at(x, y);
      box = box.with(new Box(x, y, x + 1, y + 1));
      for (int next : around(x, y, width, plane.height())) {
        if (!seen[next] && plane.at(next % width, next / width) != 0) {
          seen[next] = true;
          open.push(next);
        }
      }
    }
    return new Patch(box, pixels, sum / pixels);
  }

  private static int[] around(int x, int y, int width, int height) {
    int[] next = new int[8];
    int count = 0;
    for (int down = -1; down <= 1; down++) {
      for (int across = -1; across <= 1; across++) {
        boolean inside =
            x + across >= 0 && x + across < width && y + down >= 0 && y + down < height;
        if (inside && (across != 0 || down != 0)) {
          next[count++] = (y + down) * width + x + across;
        }
      }
    }
    return Arrays.copyOf(next, count);
  }
}
