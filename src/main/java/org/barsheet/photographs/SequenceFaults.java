package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barsheet.pixels.Box;
import org.barsheet.pixels.CameraMove;
import org.barsheet.pixels.Intruder;
import org.barsheet.pixels.Intruders;
import org.barsheet.pixels.Proxy;
import org.barsheet.plan.Tolerances;

/** Everything that is wrong with the photographs of a sequence. */
final class SequenceFaults {

  private final PlannedSequence planned;
  private final SequenceLooks looks;
  private final OpenMeasure open;
  private final Tolerances may;

  SequenceFaults(PlannedSequence planned, SequenceLooks looks, OpenMeasure open, Tolerances may) {
    this.planned = planned;
    this.looks = looks;
    this.open = open;
    this.may = may;
  }

  /**
   * What is wrong, in the order of the plan.
   *
   * @param photographs paired ones, in the order of the plan
   * @param places of each among the looks
   */
  List<PhotographFault> of(List<CheckedPhotograph> photographs, List<Integer> places) {
    List<PhotographFault> faults = new ArrayList<>();
    faults.addAll(new CameraFaults(looks.frames(), may.camera()).of(photographs));
    List<CheckedPhotograph> moved = new ArrayList<>();
    List<Integer> movedPlaces = new ArrayList<>();
    for (int i = 0; i < photographs.size(); i++) {
      if (photographs.get(i).planned().number() >= 0) {
        moved.add(photographs.get(i));
        movedPlaces.add(places.get(i));
      }
    }
    faults.addAll(new LightFaults(may.light(), may.color()).of(moved));
    faults.addAll(new PlainFaults(may).of(photographs));
    open.meter()
        .ifPresent(meter -> faults.addAll(BackingFaults.of(moved, movedPlaces, meter, may)));
    if (open.isKnown()) {
      String unit = planned.moving().orElseThrow().measure().unit();
      faults.addAll(new StepFaults(open.geometry().orElseThrow(), unit, may.step()).of(moved));
    }
    faults.addAll(objects(moved, movedPlaces));
    return inOrder(faults, photographs);
  }

  private List<PhotographFault> objects(List<CheckedPhotograph> photographs, List<Integer> places) {
    if (photographs.size() < 3) {
      return List.of();
    }
    List<Proxy> proxies = places.stream().map(place -> looks.looks().get(place).proxy()).toList();
    List<CameraMove> moves = photographs.stream().map(CheckedPhotograph::move).toList();
    double[] stops = photographs.stream().mapToDouble(one -> one.light().stops()).toArray();
    List<Box> moving = open.geometry().map(hole -> List.of(hole.sweep())).orElse(List.of());
    List<Box> near = open.geometry().map(hole -> List.of(hole.shadow())).orElse(List.of());
    Intruders intruders = new Intruders(proxies, moves, stops, moving, near, may.shadow());
    List<List<Intruder>> found = new ArrayList<>();
    for (int i = 0; i < photographs.size(); i++) {
      found.add(intruders.in(i));
    }
    return new ObjectFaults(looks.frames()).of(photographs, found);
  }

  private static List<PhotographFault> inOrder(
      List<PhotographFault> faults, List<CheckedPhotograph> photographs) {
    List<String> names = Range.names(photographs);
    return faults.stream()
        .sorted(
            Comparator.comparingInt(
                (PhotographFault fault) -> names.indexOf(fault.photographs().get(0))))
        .toList();
  }

  /** The photographs, each with the kinds of its faults. */
  static List<CheckedPhotograph> marked(
      List<CheckedPhotograph> photographs, List<PhotographFault> faults) {
    Map<String, Set<FaultKind>> kinds = new HashMap<>();
    for (PhotographFault fault : faults) {
      for (String name : fault.photographs()) {
        kinds.computeIfAbsent(name, none -> EnumSet.noneOf(FaultKind.class)).add(fault.kind());
      }
    }
    return photographs.stream()
        .map(
            one ->
                one.with(
                    List.copyOf(
                        kinds.getOrDefault(one.planned().name(), EnumSet.noneOf(FaultKind.class)))))
        .toList();
  }
}
