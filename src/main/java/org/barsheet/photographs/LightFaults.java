package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.barsheet.pixels.LightChange;
import org.barsheet.pixels.Robust;

/**
 * Finds light that flickers, that changes at one photograph and stays so, and that drifts from
 * first to last; of each, its color too.
 */
final class LightFaults {

  private static final int NEIGHBORS = 3;

  private final double light;
  private final double color;

  /**
   * With what may be.
   *
   * @param light stops by which still things may be brighter or darker
   * @param color stops by which red or blue may change against green
   */
  LightFaults(double light, double color) {
    this.light = light;
    this.color = color;
  }

  List<PhotographFault> of(List<CheckedPhotograph> photographs) {
    List<CheckedPhotograph> known =
        photographs.stream().filter(one -> one.light().isKnown()).toList();
    List<PhotographFault> faults = new ArrayList<>();
    if (known.size() > 1) {
      faults.addAll(
          new Course(known, LightChange::stops, light, FaultKind.LIGHT, "light").faults());
      faults.addAll(
          new Course(known, LightChange::redder, color, FaultKind.COLOR, "red of the light")
              .faults());
      faults.addAll(
          new Course(known, LightChange::bluer, color, FaultKind.COLOR, "blue of the light")
              .faults());
    }
    return faults;
  }

  /** One value of the light from photograph to photograph. */
  private static final class Course {
    private final List<CheckedPhotograph> known;
    private final double[] values;
    private final double tolerance;
    private final FaultKind kind;
    private final String noun;
    private final List<PhotographFault> faults = new ArrayList<>();

    Course(
        List<CheckedPhotograph> known,
        ToDoubleFunction<LightChange> value,
        double tolerance,
        FaultKind kind,
        String noun) {
      this.known = known;
      this.values = known.stream().mapToDouble(one -> value.applyAsDouble(one.light())).toArray();
      this.tolerance = tolerance;
      this.kind = kind;
      this.noun = noun;
    }

    List<PhotographFault> faults() {
      flickers();
      changes();
      drift();
      return faults;
    }

    /** One that differs from those about it counts as they do from then on. */
    private void flickers() {
      double[] steady = values.clone();
      for (int i = 0; i < values.length; i++) {
        double off = values[i] - between(i);
        if (Math.abs(off) > tolerance && known.size() > 2) {
          steady[i] = values[i] - off;
          CheckedPhotograph one = known.get(i);
          add(
              List.of(one),
              one.planned().name()
                  + " is "
                  + words(off, one.light(), kind)
                  + " than those around it",
              "Take it again, or even it (--even).");
        }
      }
      System.arraycopy(steady, 0, values, 0, values.length);
    }

    /**
     * What it should be by those about it: the middle of those before and of those after, whichever
     * is nearer, so that a change that stays is no flicker.
     */
    private double between(int index) {
      double[] before =
          IntStream.range(Math.max(0, index - NEIGHBORS), index)
              .mapToDouble(i -> values[i])
              .toArray();
      double[] after =
          IntStream.range(index + 1, Math.min(values.length, index + 1 + NEIGHBORS))
              .mapToDouble(i -> values[i])
              .toArray();
      if (before.length == 0 || after.length == 0) {
        return Robust.median(before.length == 0 ? after : before);
      }
      double early = Robust.median(before);
      double late = Robust.median(after);
      return Math.max(Math.min(early, late), Math.min(Math.max(early, late), values[index]));
    }

    /** A change from one photograph to the next that stays is taken out of the drift. */
    private void changes() {
      for (int i = 2; i < values.length - 1; i++) {
        double early = Robust.median(values[i - 1], values[i - 2], values[Math.max(0, i - 3)]);
        double late =
            Robust.median(values[i], values[i + 1], values[Math.min(values.length - 1, i + 2)]);
        double change = values[i] - values[i - 1];
        boolean isAbrupt = Math.abs(change) > 0.7 * Math.abs(late - early);
        if (Math.abs(late - early) > tolerance && isAbrupt && Math.abs(change) > tolerance) {
          CheckedPhotograph one = known.get(i);
          add(
              known.subList(i, known.size()),
              "the "
                  + noun
                  + " changes at "
                  + one.planned().name()
                  + " and stays so: "
                  + words(change, one.light(), kind),
              "Find what changed, and take "
                  + Range.of(known.subList(i, known.size()))
                  + " again, or even them (--even).");
          for (int later = i; later < values.length; later++) {
            values[later] -= change;
          }
        }
      }
    }

    private void drift() {
      double whole = Robust.slope(values) * (values.length - 1);
      if (Math.abs(whole) > tolerance && values.length > 3) {
        CheckedPhotograph last = known.get(known.size() - 1);
        add(
            known,
            "the "
                + noun
                + " drifts: "
                + last.planned().name()
                + " is "
                + words(whole, last.light(), kind)
                + " than "
                + known.get(0).planned().name(),
            "Let lamps warm up before the first photograph; even these (--even).");
      }
    }

    private void add(List<CheckedPhotograph> photographs, String sentence, String remedy) {
      faults.add(new PhotographFault(kind, Range.names(photographs), sentence, remedy));
    }

    private String words(double stops, LightChange light, FaultKind kind) {
      String size = String.format(Locale.ROOT, "%.2f stops", Math.abs(stops));
      if (kind == FaultKind.COLOR) {
        String channel = noun.startsWith("red") ? "red" : "blue";
        return size + (stops > 0 ? " more " : " less ") + channel;
      }
      return String.format(
          Locale.ROOT,
          "%s (%.1f of 255 levels) %s",
          size,
          Math.abs(light.levels(stops)),
          stops > 0 ? "brighter" : "darker");
    }
  }
}
