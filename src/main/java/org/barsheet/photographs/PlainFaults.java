package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.barsheet.pixels.Robust;
import org.barsheet.plan.Tolerances;

/** Finds what each photograph tells by itself: focus, exposure, size, another camera or lens. */
final class PlainFaults {

  private final Tolerances tolerances;
  private final List<PhotographFault> faults = new ArrayList<>();

  PlainFaults(Tolerances tolerances) {
    this.tolerances = tolerances;
  }

  List<PhotographFault> of(List<CheckedPhotograph> photographs) {
    List<CheckedPhotograph> seen =
        photographs.stream().filter(one -> one.move().isKnown()).toList();
    if (!seen.isEmpty()) {
      focus(seen);
    }
    clipped(photographs);
    settings(photographs, "camera", one -> one.taken().facts().camera());
    settings(photographs, "lens", one -> one.taken().facts().lens());
    settings(photographs, "focal length", one -> one.taken().facts().focal());
    settings(photographs, "exposure", one -> one.taken().facts().exposure());
    settings(photographs, "white balance", one -> one.taken().facts().whiteBalance());
    return List.copyOf(faults);
  }

  private void focus(List<CheckedPhotograph> seen) {
    double usual = Robust.median(seen.stream().mapToDouble(CheckedPhotograph::sharpness).toArray());
    for (CheckedPhotograph one : seen) {
      double left = 100 * one.sharpness() / usual;
      if (left < tolerances.focus()) {
        add(
            FaultKind.FOCUS,
            List.of(one),
            String.format(
                Locale.ROOT,
                "%s is out of focus or shaken: %.0f %% of the others' detail",
                one.planned().name(),
                left),
            "Set the focus by hand, use a remote release, and take it again.");
      }
    }
  }

  private void clipped(List<CheckedPhotograph> photographs) {
    List<CheckedPhotograph> clipped =
        photographs.stream().filter(one -> 100 * one.clipped() > tolerances.clipped()).toList();
    if (!clipped.isEmpty()) {
      double worst = clipped.stream().mapToDouble(CheckedPhotograph::clipped).max().orElse(0);
      add(
          FaultKind.CLIPPED,
          clipped,
          String.format(
              Locale.ROOT,
              "%s: up to %.1f %% of what is still is so bright that nothing is left of it",
              Range.of(clipped),
              100 * worst),
          "Expose less, and take "
              + (clipped.size() == 1 ? "it" : "the whole movement")
              + " again.");
    }
  }

  /** What most photographs say is usual; what a few say otherwise is told. */
  private void settings(
      List<CheckedPhotograph> photographs,
      String what,
      Function<CheckedPhotograph, String> setting) {
    Map<String, List<CheckedPhotograph>> by = new LinkedHashMap<>();
    photographs.forEach(
        one -> by.computeIfAbsent(setting.apply(one), none -> new ArrayList<>()).add(one));
    String usual = "";
    for (Map.Entry<String, List<CheckedPhotograph>> entry : by.entrySet()) {
      boolean more = entry.getValue().size() > by.getOrDefault(usual, List.of()).size();
      usual = more ? entry.getKey() : usual;
    }
    for (Map.Entry<String, List<CheckedPhotograph>> entry : by.entrySet()) {
      if (!entry.getKey().equals(usual)) {
        String other = entry.getKey().isEmpty() ? "none written" : entry.getKey();
        add(
            FaultKind.OTHER_CAMERA,
            entry.getValue(),
            Range.of(entry.getValue()) + ": " + what + " " + other + ", the others " + usual,
            "Set the camera to manual, and compare these with their neighbors.");
      }
    }
  }

  private void add(
      FaultKind kind, List<CheckedPhotograph> photographs, String sentence, String remedy) {
    faults.add(new PhotographFault(kind, Range.names(photographs), sentence, remedy));
  }
}
