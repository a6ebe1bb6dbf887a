package org.barsheet.photographs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.barsheet.exposure.Movement;
import org.barsheet.photographs.CopyStand.Shot;
import org.barsheet.photographs.CopyStand.Thing;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal.EvenIn;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Tolerances;
import org.barsheet.plan.Where;

/** A seeded sequence of photographs with a known fault, and what is said of it. */
final class RenderedSequence {

  static final int WIDTH = 480;
  static final int HEIGHT = 270;

  /** What is wrong. */
  enum Fault {
    NONE,
    BUMP,
    TURN,
    DRIFT,
    FLICKER,
    REDDER,
    TOO_FAR,
    TOO_LITTLE,
    BACKWARDS,
    REPEATED,
    HAND,
    THREAD,
    SHADOW,
    SPILL,
    DARK_BACKING,
    UNFOCUSED,
    ONE_TOO_MANY,
    ONE_MISSING,
    EXCHANGED
  }

  final Fault fault;
  final long seed;
  final int at;
  final PlannedSequence planned;
  final List<Shot> shots = new ArrayList<>();
  final double size;

  final CopyStand stand;
  private final SplittableRandom random;
  private final List<Taken> taken = new ArrayList<>();

  RenderedSequence(Fault fault, long seed, boolean otherStyle, int photographs) {
    this.fault = fault;
    this.seed = seed;
    this.random = new SplittableRandom(seed);
    Artwork.Model model = new Artwork.Model("lamp", 3, "green", "dusk");
    Artwork artwork = new Artwork(25.4, 24, 13.5, List.of(), 0, List.of(model));
    Rect view = new Rect(2.5, 6.2, 7, 7 * 9.0 / 16);
    double wide = 1.3 + 0.7 * random.nextDouble();
    double high = 1.4 + 0.9 * random.nextDouble();
    Rect rect =
        new Rect(
            2.5 + 1.5 + (4 - wide) * random.nextDouble(),
            6.2 + 0.6 + (2.7 - high) * random.nextDouble(),
            wide,
            high);
    String[] sides = {"left", "right", "top", "bottom"};
    String side = sides[random.nextInt(4)];
    boolean slides = random.nextInt(3) == 0;
    Opening.Side toward = Opening.Side.valueOf(side.toUpperCase(java.util.Locale.ROOT));
    Opening.Motion motion =
        slides
            ? new Opening.Slides(toward, 0)
            : new Opening.Hinged(toward, 60 + random.nextInt(4) * 10);
    Opening opening =
        new Opening("lamp", rect, "lamp", motion, List.of(), new Where("plan.yaml", ""));
    Movement movement =
        Movement.of(
            "lamp",
            opening,
            List.of("lamp"),
            artwork,
            Hand.DEFAULT,
            random.nextBoolean() ? Slow.END : Slow.NONE,
            random.nextBoolean() ? EvenIn.ANGLE : EvenIn.OPENING,
            photographs - 1);
    double distance = 50 * (7 * 76.2 / 36 + 1);
    this.planned =
        PlannedSequence.of(
            movement,
            List.of(),
            new PlannedSequence.Moving(
                opening,
                movement.measure(),
                Optional.of(view),
                76.2,
                distance,
                Optional.of("00A03C")));
    double pixels = WIDTH / view.width();
    // Nobody frames to the pixel: the paper lies a little elsewhere than planned.
    double offX = 6 * (random.nextDouble() - 0.5);
    double offY = 6 * (random.nextDouble() - 0.5);
    double left = (rect.left() - view.left()) * pixels + offX;
    double top = (rect.top() - view.top()) * pixels + offY;
    double[] hole = {left, top, left + wide * pixels, top + high * pixels};
    this.stand =
        new CopyStand(
            WIDTH,
            HEIGHT,
            hole,
            new CopyStand.Flap(slides ? "" : side, slides ? side : ""),
            76.2 / pixels,
            distance * (0.97 + 0.06 * random.nextDouble()),
            otherStyle,
            new double[] {0.02, 0.34, 0.05},
            seed * 7 + 3);
    movement
        .photographs()
        .forEach(
            one -> {
              Shot shot = new Shot(one.measures().set().doubleValue());
              // Hands set within a tenth of a degree or millimeter, lamps burn within half a
              // percent.
              double slack = 0.15;
              shot.amount =
                  shot.amount == 0
                      ? 0
                      : Math.max(0, shot.amount + slack * (random.nextDouble() - 0.5));
              shot.light = 1 + 0.006 * (random.nextDouble() - 0.5);
              shot.across = 0.06 * (random.nextDouble() - 0.5);
              shot.down = 0.06 * (random.nextDouble() - 0.5);
              shots.add(shot);
            });
    this.at = telling(3 + random.nextInt(photographs - 5), hole);
    this.size = spoil(hole);
  }

  /** Where two steps cannot be told apart, none can be missed: the next that can. */
  private int telling(int from, double[] hole) {
    boolean across = stand.scene().isAcross();
    double travel = across ? hole[2] - hole[0] : hole[3] - hole[1];
    double least = Math.max(0.015, 1.5 / travel);
    int at = from;
    while (at > 1 && !tells(at, least)) {
      at--;
    }
    return at;
  }

  private boolean tells(int at, double least) {
    double before = stand.scene().uncovered(shots.get(at - 1));
    double here = stand.scene().uncovered(shots.get(at));
    double after = stand.scene().uncovered(shots.get(at + 1));
    return here - before > 1.5 * least && after - here > 1.5 * least;
  }

  private double spoil(double[] hole) {
    Shot shot = shots.get(at);
    double sign = random.nextBoolean() ? 1 : -1;
    double some = random.nextDouble();
    switch (fault) {
      case NONE -> {
        return 0;
      }
      case BUMP -> {
        double shift = 0.3 * Math.pow(20, some);
        double angle = random.nextDouble() * 2 * Math.PI;
        for (Shot later : shots.subList(at, shots.size())) {
          later.across += shift * Math.cos(angle);
          later.down += shift * Math.sin(angle);
        }
        return shift;
      }
      case TURN -> {
        double turn = sign * 0.05 * Math.pow(10, some);
        shots.subList(at, shots.size()).forEach(later -> later.turn = turn);
        return turn;
      }
      case DRIFT -> {
        double drift = sign * (0.025 + 0.01 * some);
        for (int i = 0; i < shots.size(); i++) {
          shots.get(i).light *= 1 + drift * i / (shots.size() - 1);
        }
        return drift;
      }
      case FLICKER -> {
        shot.light *= 1 + sign * 0.05;
        return 0.05;
      }
      case REDDER -> {
        shot.redder = 1 + sign * 0.05;
        return 0.05;
      }
      case TOO_FAR, TOO_LITTLE, BACKWARDS, REPEATED -> {
        return misstep();
      }
      case HAND -> shot.thing = Optional.of(thing(Thing.Kind.HAND, hole, 14 + 20 * some));
      case THREAD -> shot.thing = Optional.of(thing(Thing.Kind.THREAD, hole, 30 + 40 * some));
      case SHADOW -> shot.thing = Optional.of(thing(Thing.Kind.SHADOW, hole, 40 + 20 * some));
      case SPILL -> shots.forEach(one -> one.spill = one.amount > 0 ? 0.3 : 0);
      case DARK_BACKING -> shots.forEach(one -> one.dark = 0.75);
      case UNFOCUSED -> shot.blur = 1.2;
      case ONE_TOO_MANY -> shots.add(at, copy(shot));
      case ONE_MISSING -> shots.remove(at);
      case EXCHANGED -> {
        Shot other = shots.get(at + 1);
        shots.set(at + 1, shot);
        shots.set(at, other);
      }
      default -> throw new IllegalStateException();
    }
    return 1;
  }

  private static Shot copy(Shot shot) {
    Shot copy = new Shot(shot.amount);
    copy.light = shot.light;
    return copy;
  }

  private double misstep() {
    double before = shots.get(at - 1).amount;
    double step = shots.get(at).amount - before;
    double amount =
        switch (fault) {
          case TOO_FAR -> before + 2 * step;
          case TOO_LITTLE -> before + step * 0.2;
          case BACKWARDS -> before - step;
          default -> before;
        };
    shots.get(at).amount = Math.max(0, amount);
    return Math.abs(amount - before - step);
  }

  /** Somewhere away from the hole. */
  private Thing thing(Thing.Kind kind, double[] hole, double size) {
    double farthest = 0;
    double bestX = 0;
    double bestY = 0;
    for (int trial = 0; trial < 30; trial++) {
      double x = size + (WIDTH - 2 * size) * random.nextDouble();
      double y = Math.min(size, 60) + (HEIGHT - 2 * Math.min(size, 60)) * random.nextDouble();
      double far = Math.max(Math.max(hole[0] - x, x - hole[2]), Math.max(hole[1] - y, y - hole[3]));
      if (far > farthest) {
        farthest = far;
        bestX = x;
        bestY = y;
      }
    }
    return new Thing(kind, bestX, bestY, size, random.nextDouble() * Math.PI);
  }

  /** Kinds of which one has to be told. */
  Set<FaultKind> wanted() {
    return switch (fault) {
      case NONE, ONE_TOO_MANY, ONE_MISSING, EXCHANGED -> Set.of();
      case BUMP, TURN -> Set.of(FaultKind.CAMERA);
      case DRIFT, FLICKER -> Set.of(FaultKind.LIGHT);
      case REDDER -> Set.of(FaultKind.COLOR);
      case TOO_FAR, TOO_LITTLE, BACKWARDS, REPEATED -> Set.of(FaultKind.STEP);
      case HAND, THREAD -> Set.of(FaultKind.OBJECT);
      case SHADOW -> Set.of(FaultKind.SHADOW, FaultKind.OBJECT);
      case SPILL, DARK_BACKING -> Set.of(FaultKind.BACKING);
      case UNFOCUSED -> Set.of(FaultKind.FOCUS);
    };
  }

  /** Kinds that may be told with good reason. */
  Set<FaultKind> explained() {
    return switch (fault) {
      case HAND, SHADOW -> EnumSet.of(FaultKind.OBJECT, FaultKind.SHADOW, FaultKind.LIGHT);
      case REDDER -> EnumSet.of(FaultKind.COLOR, FaultKind.LIGHT);
      case SPILL -> EnumSet.of(FaultKind.BACKING, FaultKind.OBJECT, FaultKind.SHADOW);
      case UNFOCUSED -> EnumSet.of(FaultKind.FOCUS, FaultKind.OBJECT, FaultKind.STEP);
      default -> wanted();
    };
  }

  boolean isOfPairing() {
    return fault == Fault.ONE_TOO_MANY || fault == Fault.ONE_MISSING || fault == Fault.EXCHANGED;
  }

  /** Whether something is wrong with the photograph taken at a place. */
  boolean isSpoiled(int place) {
    return switch (fault) {
      case NONE -> false;
      case BUMP, TURN -> place >= at;
      case DRIFT, SPILL, DARK_BACKING -> true;
      default -> place == at;
    };
  }

  /** Whether a photograph shows what a planned one is to show, as far as an eye can tell. */
  boolean isAlike(int place, PlannedPhotograph planned) {
    double shown = stand.scene().uncovered(shots.get(place));
    double asked = stand.scene().uncovered(new Shot(planned.amount()));
    return Math.abs(shown - asked) < Math.max(0.015, 1.5 / stand.scene().travel());
  }

  /** Takes them into a folder. */
  List<Taken> takenInto(Path folder) throws IOException, UnreadablePhotographException {
    Files.createDirectories(folder);
    for (int i = 0; i < shots.size(); i++) {
      Path file = folder.resolve("IMG_" + (4031 + i) + ".JPG");
      stand.take(shots.get(i), file);
      taken.add(new Taken(file, PhotographReader.facts(file)));
    }
    return taken;
  }

  /** Looks at them. */
  CheckedSequence checked() {
    return SequenceCheck.of(
        planned, taken, Optional.empty(), Tolerances.DEFAULT, WIDTH, HEIGHT, () -> {});
  }
}
