package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.barsheet.pixels.Box;
import org.barsheet.pixels.CameraMove;
import org.barsheet.pixels.Clipping;
import org.barsheet.pixels.ColorImage;
import org.barsheet.pixels.HoleView;
import org.barsheet.pixels.LightCells;
import org.barsheet.pixels.Proxy;
import org.barsheet.pixels.Reduced;
import org.barsheet.pixels.Registration;

/** Looks at photographs of one size, a few at a time, and keeps little of each. */
final class Looks {

  private static final int PROXY = 960;

  /** A decoded photograph of 26 million pixels takes 78 MB. */
  private static final int MOST_AT_ONCE = 3;

  private final List<Box> still;
  private final Optional<Box> hole;
  private final Registration registration;
  private final LightCells first;

  /**
   * Begins with the photograph that the others are compared with.
   *
   * @param moving parts that move, in pixels of the decoded image
   * @param hole the hole and something about it, in the same
   */
  private Looks(ColorImage reference, List<Box> moving, Optional<Box> hole) {
    this.still = List.copyOf(moving);
    this.hole = hole;
    Reduced small = Reduced.of(reference, PROXY);
    this.registration = new Registration(reference, small, moving);
    this.first = LightCells.of(small, moving, CameraMove.NONE);
  }

  /**
   * What was seen, by the photographs' places in their list; damaged ones are in {@code broken}.
   */
  record Seen(Map<Integer, Look> looks, Map<Integer, UnreadablePhotographException> broken) {}

  /**
   * Looks at all of them.
   *
   * @param reference that they are compared with
   * @param moving parts that move, in pixels of the decoded image
   * @param hole the hole and something about it, in the same
   */
  static Seen of(
      Taken reference, List<Taken> photographs, List<Box> moving, Optional<Box> hole, Runnable each)
      throws UnreadablePhotographException {
    ColorImage first = PhotographReader.decode(reference.file(), reference.facts());
    return new Looks(first, moving, hole).all(photographs, each);
  }

  private Seen all(List<Taken> photographs, Runnable each) {
    int threads = Math.min(MOST_AT_ONCE, Runtime.getRuntime().availableProcessors());
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Look>> futures = new ArrayList<>();
      for (Taken one : photographs) {
        Callable<Look> look =
            () -> {
              Look seen = at(PhotographReader.decode(one.file(), one.facts()));
              each.run();
              return seen;
            };
        futures.add(pool.submit(look));
      }
      return gathered(futures);
    } finally {
      pool.shutdownNow();
    }
  }

  private static Seen gathered(List<Future<Look>> futures) {
    Map<Integer, Look> looks = new LinkedHashMap<>();
    Map<Integer, UnreadablePhotographException> broken = new LinkedHashMap<>();
    for (int i = 0; i < futures.size(); i++) {
      try {
        looks.put(i, futures.get(i).get());
      } catch (ExecutionException failed) {
        if (failed.getCause() instanceof UnreadablePhotographException unreadable) {
          broken.put(i, unreadable);
        } else {
          throw new IllegalStateException(failed.getCause());
        }
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(stopped);
      }
    }
    return new Seen(looks, broken);
  }

  private Look at(ColorImage image) {
    Reduced small = Reduced.of(image, PROXY);
    Registration.Measured measured = registration.measure(image, small);
    return new Look(
        measured.move(),
        measured.sharpness(),
        LightCells.of(small, still, measured.move()).since(first),
        Clipping.share(image, still),
        Proxy.of(small),
        Small.of(small),
        hole.map(box -> HoleView.of(image, box)));
  }
}
