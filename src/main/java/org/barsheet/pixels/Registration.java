package org.barsheet.pixels;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import org.barsheet.pixels.BlockMatch.Found;

/**
 * Measures how the camera moved since a first photograph, by blocks of what stays still. A rough
 * shift of the whole comes from {@link PhaseCorrelation}, each block's own from {@link BlockMatch};
 * shift, turn and scale are fitted to them by least squares that leave out what disagrees.
 */
public final class Registration {

  /** Fewer places than this say too little about a turn. */
  static final int FEWEST = 4;

  private static final int COLUMNS = 7;
  private static final int ROWS = 5;
  private static final int LARGEST_BLOCK = 128;
  private static final int SMALLEST_BLOCK = 32;

  /** Gray levels squared that a slope must have on average, or a block is smooth paper. */
  private static final double LEAST_TEXTURE = 0.35;

  private static final int ROUGH = 512;

  /** Blocks this near, in pixels, are found at once. */
  private static final double NEAR = 1;

  /** Pixels by which places may disagree before one is left out, at least. */
  private static final double LEAST_DOUBT = 0.12;

  private final int width;
  private final int height;
  private final List<BlockMatch> blocks;
  private final Plane rough;
  private final int factor;

  /**
   * Begins with the photograph that others are compared with.
   *
   * @param moving parts where something moves or will move
   */
  public Registration(ColorImage first, Reduced small, List<Box> moving) {
    this.width = first.width();
    this.height = first.height();
    this.blocks = blocks(first, moving);
    this.rough = rough(small);
    this.factor = small.factor();
  }

  private static List<BlockMatch> blocks(ColorImage first, List<Box> moving) {
    int size = LARGEST_BLOCK;
    while (size > SMALLEST_BLOCK && size * (ROWS + 1) > first.height()) {
      size /= 2;
    }
    List<BlockMatch> blocks = new ArrayList<>();
    int edge = size / 4;
    for (int row = 0; row < ROWS; row++) {
      for (int column = 0; column < COLUMNS; column++) {
        int left = edge + column * (first.width() - size - 2 * edge) / (COLUMNS - 1);
        int top = edge + row * (first.height() - size - 2 * edge) / (ROWS - 1);
        Box place = new Box(left, top, left + size, top + size);
        if (left >= 0 && top >= 0 && moving.stream().noneMatch(place::meets)) {
          BlockMatch block = new BlockMatch(first, left, top, size);
          if (block.texture() > LEAST_TEXTURE) {
            blocks.add(block);
          }
        }
      }
    }
    return List.copyOf(blocks);
  }

  /** The middle of a small image, as large as a power of two allows. */
  private static Plane rough(Reduced small) {
    Plane levels = small.levels();
    int size = Integer.highestOneBit(Math.min(Math.min(levels.width(), levels.height()), ROUGH));
    return levels.part((levels.width() - size) / 2, (levels.height() - size) / 2, size, size);
  }

  /** How the camera sees what stays still in another photograph of the same size. */
  public Measured measure(ColorImage image, Reduced small) {
    CameraMove move = fit(firstFound(image, small));
    // Blocks that lay near where they were looked for need no second look.
    for (int round = 0; round < 2 && farOff(move); round++) {
      CameraMove known = move;
      move = fit(found(image, block -> acrossOf(known, block), block -> downOf(known, block)));
    }
    CameraMove last = move;
    List<Double> detail = new ArrayList<>();
    if (last.isKnown()) {
      for (BlockMatch block : blocks) {
        Found there =
            new Found(block.middleX(), block.middleY(), acrossOf(last, block), downOf(last, block));
        detail.add(block.detailIn(image, there) / Math.max(1e-12, block.detail()));
      }
    }
    double sharp = detail.isEmpty() ? 1 : Math.sqrt(Robust.median(detail));
    return new Measured(last, sharp);
  }

  private boolean farOff(CameraMove move) {
    return move.isKnown() && move.shift() + move.atCorner(width, height) > NEAR;
  }

  /** Blocks where they were, or about where the whole was shifted to, or each by itself. */
  private List<Found> firstFound(ColorImage image, Reduced small) {
    List<Found> found = found(image, block -> 0, block -> 0);
    if (2 * found.size() >= blocks.size()) {
      return found;
    }
    PhaseCorrelation.Shift shift = PhaseCorrelation.shift(rough, rough(small));
    double across = shift.across() * factor;
    double down = shift.down() * factor;
    found = more(found, () -> found(image, block -> across, block -> down));
    found = more(found, () -> foundOneByOne(image, 0, 0));
    return more(found, () -> foundOneByOne(image, across, down));
  }

  /**
   * What was measured of a photograph.
   *
   * @param move of the camera since the first one
   * @param sharpness of detail, 1 as in the first one
   */
  public record Measured(CameraMove move, double sharpness) {}

  private double acrossOf(CameraMove move, BlockMatch block) {
    double x = block.middleX() - width / 2.0;
    return move.x(x, block.middleY() - height / 2.0) - x;
  }

  private double downOf(CameraMove move, BlockMatch block) {
    double y = block.middleY() - height / 2.0;
    return move.y(block.middleX() - width / 2.0, y) - y;
  }

  private List<Found> found(
      ColorImage image, ToDoubleFunction<BlockMatch> across, ToDoubleFunction<BlockMatch> down) {
    List<Found> found = new ArrayList<>();
    for (BlockMatch block : blocks) {
      block
          .find(image, across.applyAsDouble(block), down.applyAsDouble(block))
          .ifPresent(found::add);
    }
    return found;
  }

  /** What was found, or more of it where that was too little: a moving part may lead astray. */
  private List<Found> more(List<Found> found, Supplier<List<Found>> another) {
    if (2 * found.size() >= blocks.size()) {
      return found;
    }
    List<Found> other = another.get();
    return other.size() > found.size() ? other : found;
  }

  /** Where a turn shifts blocks by more than they are followed, each is looked for by itself. */
  private List<Found> foundOneByOne(ColorImage image, double across, double down) {
    List<Found> found = new ArrayList<>();
    for (BlockMatch block : blocks) {
      PhaseCorrelation.Shift own = block.roughly(image, across, down);
      block
          .find(image, Math.round(across) + own.across(), Math.round(down) + own.down())
          .ifPresent(found::add);
    }
    return found;
  }

  private CameraMove fit(List<Found> found) {
    List<Found> kept = found;
    for (int round = 0; round < 4 && kept.size() >= FEWEST; round++) {
      CameraMove now = round == 0 ? median(kept) : SimilarityFit.of(kept, width, height);
      double[] off = found.stream().mapToDouble(one -> off(one, now)).toArray();
      double limit = Math.max(LEAST_DOUBT, 3 * 1.4826 * Robust.median(off));
      double allowed = round == 0 ? Math.max(limit, 1 + slack()) : limit;
      kept = found.stream().filter(one -> off(one, now) <= allowed).toList();
    }
    return kept.size() < FEWEST ? CameraMove.NONE : SimilarityFit.of(kept, width, height);
  }

  /** A turn or a change of scale as large as cameras get bumped by shifts the rim by this much. */
  private double slack() {
    return 0.01 * Math.hypot(width, height) / 2;
  }

  private CameraMove median(List<Found> found) {
    return new CameraMove(
        Robust.median(found.stream().mapToDouble(Found::across).toArray()),
        Robust.median(found.stream().mapToDouble(Found::down).toArray()),
        0,
        1,
        found.size(),
        0);
  }

  private double off(Found found, CameraMove move) {
    double x = found.x() - width / 2.0;
    double y = found.y() - height / 2.0;
    return Math.hypot(found.across() - (move.x(x, y) - x), found.down() - (move.y(x, y) - y));
  }
}
