package org.barsheet.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;

/**
 * Counts how fast the frame may flash. WCAG 2.3.1 (level A) allows no more than three flashes in
 * any one second; a flash is a pair of opposing changes of brightness. Openings and closings of the
 * whole frame, and lamps that brighten or go out, are counted together, since rectangles that go
 * one after another add up. More than three openings, or more than three closings, within a second
 * may be more than three flashes. Times are known here, brightness is not: this warns and never
 * certifies.
 */
final class FlashRule {

  /** Flashes that WCAG 2.3.1 allows within a second. */
  static final int ALLOWED = 3;

  /**
   * Share of the frame that may flash faster: a quarter of 341 by 256 pixels at 1024 by 768 (WCAG
   * 2.2, definition of general flash and red flash thresholds; Understanding 2.3.1), about 2.8 %.
   */
  static final double SMALL_AREA = 341 * 256 / 4.0 / (1024 * 768);

  private static final Seconds ONE_SECOND = new Seconds(BigFraction.ONE);

  /** How bad a stretch is. */
  enum Verdict {
    /** One more than allowed in exactly a second. */
    AT_THE_LIMIT,
    /** One more than allowed in less than a second. */
    OVER
  }

  /**
   * A part of the frame that becomes brighter or darker.
   *
   * @param frame film frame of the change
   * @param brighter whether an opening opens or a lamp brightens; else it closes or goes out
   * @param part what changes
   * @param area its share of the frame, 0 to 1; 1 where it is not known
   */
  record Change(long frame, boolean brighter, String part, double area) {}

  /**
   * Changes that come too fast. Its worst second is one over the limit before one at it, then one
   * with too large a part of the frame before a small one, then the one that holds most.
   *
   * @param verdict how bad the worst second is
   * @param firstFrame frame of the first change
   * @param lastFrame frame of the last change
   * @param brighter openings and lamps that brighten in it
   * @param darker closings and lamps that go out in it
   * @param worstFrame frame at which the worst second begins
   * @param worstCount how many of one kind that second holds
   * @param worstArea share of the frame, 0 to 1, that changes in that second
   */
  record Stretch(
      Verdict verdict,
      long firstFrame,
      long lastFrame,
      int brighter,
      int darker,
      long worstFrame,
      int worstCount,
      double worstArea) {

    /** Whether so little of the frame changes that WCAG allows more flashes. */
    boolean isSmall() {
      return !isLarge(worstArea);
    }
  }

  private static boolean isLarge(double area) {
    return area > SMALL_AREA;
  }

  /**
   * A second that begins with a change.
   *
   * @param first index of its first change
   * @param last index of its last change
   * @param area share of the frame, 0 to 1, that changes in it
   */
  private record Window(int first, int last, Verdict verdict, int count, double area) {

    /** From the least bad to the worst. */
    static final Comparator<Window> BY_HARM =
        Comparator.comparing(Window::verdict)
            .thenComparing(window -> isLarge(window.area()))
            .thenComparing(Window::count)
            .thenComparing(Window::area);
  }

  private final List<Change> changes;
  private final FrameRate rate;

  /**
   * A rule for the changes of a film.
   *
   * @param changes in order of frame
   */
  FlashRule(List<Change> changes, FrameRate rate) {
    this.changes = List.copyOf(changes);
    this.rate = rate;
  }

  /** Most changes of one kind that any second holds, from its first change to its last. */
  int most() {
    int most = 0;
    for (int first = 0; first < changes.size(); first++) {
      most = Math.max(most, alike(first, lastWithin(first, true)));
    }
    return most;
  }

  /** Every stretch in which four changes of one kind follow one another within a second. */
  List<Stretch> stretches() {
    List<Stretch> stretches = new ArrayList<>();
    List<Window> together = new ArrayList<>();
    for (int first = 0; first < changes.size(); first++) {
      Window window = window(first);
      if (window.count() <= ALLOWED) {
        continue;
      }
      if (!together.isEmpty() && first > together.get(together.size() - 1).last()) {
        stretches.add(stretch(together));
        together.clear();
      }
      together.add(window);
    }
    if (!together.isEmpty()) {
      stretches.add(stretch(together));
    }
    return stretches;
  }

  /** The worse of the time just under a second and the whole second from a change on. */
  private Window window(int first) {
    int under = lastWithin(first, false);
    int whole = lastWithin(first, true);
    return alike(first, under) > ALLOWED
        ? window(first, under, Verdict.OVER)
        : window(first, whole, Verdict.AT_THE_LIMIT);
  }

  private Window window(int first, int last, Verdict verdict) {
    double area = area(changes.subList(first, last + 1));
    return new Window(first, last, verdict, alike(first, last), area);
  }

  private int lastWithin(int first, boolean whole) {
    int last = first;
    while (last + 1 < changes.size()) {
      long frames = changes.get(last + 1).frame() - changes.get(first).frame();
      int against = rate.frameDuration().times(frames).compareTo(ONE_SECOND);
      if (against > 0 || (against == 0 && !whole)) {
        break;
      }
      last++;
    }
    return last;
  }

  /** How many changes from one to another are of the first one's kind. */
  private int alike(int first, int last) {
    boolean brighter = changes.get(first).brighter();
    return (int)
        changes.subList(first, last + 1).stream()
            .filter(change -> change.brighter() == brighter)
            .count();
  }

  private Stretch stretch(List<Window> windows) {
    Window worst = windows.get(0);
    int last = 0;
    for (Window window : windows) {
      worst = Window.BY_HARM.compare(window, worst) > 0 ? window : worst;
      last = Math.max(last, window.last());
    }
    List<Change> within = changes.subList(windows.get(0).first(), last + 1);
    int brighter = (int) within.stream().filter(Change::brighter).count();
    return new Stretch(
        worst.verdict(),
        within.get(0).frame(),
        within.get(within.size() - 1).frame(),
        brighter,
        within.size() - brighter,
        changes.get(worst.first()).frame(),
        worst.count(),
        worst.area());
  }

  /** Share of the frame that some changes take up together, each part once, at its largest. */
  private static double area(List<Change> changes) {
    Map<String, Double> parts = new TreeMap<>();
    changes.forEach(change -> parts.merge(change.part(), change.area(), Math::max));
    return Math.min(1, parts.values().stream().mapToDouble(Double::doubleValue).sum());
  }
}
