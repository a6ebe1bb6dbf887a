package org.barsheet.pixels;

import java.util.List;
import org.barsheet.pixels.BlockMatch.Found;

/**
 * Shift, turn and scale that explain how blocks are shifted, by linear least squares: {@code dx = a
 * + s·x − t·y}, {@code dy = b + s·y + t·x} for a small turn t and a scale of 1 + s.
 */
final class SimilarityFit {

  private SimilarityFit() {}

  static CameraMove of(List<Found> found, int width, int height) {
    double meanX = mean(found, width / 2.0, true);
    double meanY = mean(found, height / 2.0, false);
    double meanAcross = found.stream().mapToDouble(Found::across).average().orElse(0);
    double meanDown = found.stream().mapToDouble(Found::down).average().orElse(0);
    double squares = 0;
    double scaling = 0;
    double turning = 0;
    for (Found one : found) {
      double x = one.x() - width / 2.0 - meanX;
      double y = one.y() - height / 2.0 - meanY;
      double across = one.across() - meanAcross;
      double down = one.down() - meanDown;
      squares += x * x + y * y;
      scaling += x * across + y * down;
      turning += x * down - y * across;
    }
    double scale = squares > 0 ? scaling / squares : 0;
    double turn = squares > 0 ? turning / squares : 0;
    double a = meanAcross - scale * meanX + turn * meanY;
    double b = meanDown - scale * meanY - turn * meanX;
    CameraMove move = new CameraMove(a, b, Math.toDegrees(turn), 1 + scale, found.size(), 0);
    double[] off =
        found.stream()
            .mapToDouble(
                one -> {
                  double x = one.x() - width / 2.0;
                  double y = one.y() - height / 2.0;
                  return Math.hypot(
                      one.across() - (move.x(x, y) - x), one.down() - (move.y(x, y) - y));
                })
            .toArray();
    return new CameraMove(a, b, move.turn(), 1 + scale, found.size(), 1.4826 * Robust.median(off));
  }

  private static double mean(List<Found> found, double middle, boolean across) {
    return found.stream()
        .mapToDouble(one -> (across ? one.x() : one.y()) - middle)
        .average()
        .orElse(0);
  }
}
