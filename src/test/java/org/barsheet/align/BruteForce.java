package org.barsheet.align;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.PhotographRun;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.cues.Cue;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;

/** Every whole layout there is, counted one by one with rules and costs written out again. */
final class BruteForce {

  /** A layout: an index into each panel's places, and its cost in millionths. */
  record Whole(List<Integer> places, long cost) {}

  private final AlignerInput input;
  private final List<Stage> stages;
  private final List<Whole> layouts = new ArrayList<>();
  private int shared;

  BruteForce(AlignerInput input, List<Stage> stages) {
    this.input = input;
    this.stages = stages;
    extend(new ArrayList<>(), 0);
  }

  List<Whole> layouts() {
    return layouts;
  }

  /** How often a panel had to leave a return to one that is not its neighbor. */
  int shared() {
    return shared;
  }

  /** The cheapest layouts with each place of each panel. */
  Map<List<Integer>, Long> cheapestThrough() {
    Map<List<Integer>, Long> least = new HashMap<>();
    for (Whole layout : layouts) {
      for (int p = 0; p < layout.places().size(); p++) {
        least.merge(List.of(p, layout.places().get(p)), layout.cost(), Math::min);
      }
    }
    return least;
  }

  private void extend(List<Integer> chosen, long cost) {
    int p = chosen.size();
    if (p == stages.size()) {
      int last = chosen.get(p - 1);
      shot(p - 1, place(p - 1, last), input.filmFrames())
          .ifPresent(shot -> layouts.add(new Whole(List.copyOf(chosen), cost + shot)));
      return;
    }
    for (int i = 0; i < stages.get(p).size(); i++) {
      Candidate here = place(p, i);
      Optional<Long> shot = Optional.of(0L);
      if (p > 0) {
        Candidate before = place(p - 1, chosen.get(p - 1));
        boolean follows = here.afterCut() == -1 || here.afterCut() == before.cut();
        boolean sameCue =
            here.cue().id().equals(before.cue().id()) && here.cue().frame() == before.cue().frame();
        boolean taken = !isFree(here, chosen);
        shared += taken && !sameCue && follows ? 1 : 0;
        boolean free = !sameCue && !taken && holds(here, chosen);
        shot = follows && free ? shot(p - 1, before, here.cut()) : Optional.empty();
      }
      if (shot.isPresent()) {
        chosen.add(i);
        extend(chosen, cost + shot.get() + here.cost());
        chosen.remove(chosen.size() - 1);
      }
    }
  }

  /** Whether no panel before, neighbor or not, sits on the same return. */
  private boolean isFree(Candidate here, List<Integer> chosen) {
    return here.cue().kind() != Cue.Kind.RETURN || !returnsOf(chosen).contains(here.cue().id());
  }

  private Set<String> returnsOf(List<Integer> chosen) {
    return IntStream.range(0, chosen.size())
        .mapToObj(p -> place(p, chosen.get(p)).cue())
        .filter(cue -> cue.kind() == Cue.Kind.RETURN)
        .map(Cue::id)
        .collect(Collectors.toSet());
  }

  /**
   * Of a place that stands there several times, told apart by the returns held before it, the one
   * these panels lead to: it holds what they sit on and some later panel could still take.
   */
  private boolean holds(Candidate here, List<Integer> chosen) {
    Set<String> wanted =
        stages.subList(chosen.size() + 1, stages.size()).stream()
            .flatMap(stage -> IntStream.range(0, stage.size()).mapToObj(stage::candidate))
            .filter(later -> later.cut() > here.cut())
            .map(later -> later.cue().id())
            .collect(Collectors.toSet());
    wanted.retainAll(returnsOf(chosen));
    return here.held().equals(wanted);
  }

  private Candidate place(int p, int i) {
    return stages.get(p).candidate(i);
  }

  private Optional<Long> shot(int p, Candidate place, long end) {
    Panel panel = stages.get(p).panel();
    long frames = end - place.cut();
    boolean anchored = place.anchor() >= place.cut() && place.anchor() < end;
    if (frames < 1 || place.cut() < 0 || !anchored) {
      return Optional.empty();
    }
    double wanted = (double) input.filmFrames() / stages.size();
    double weight = 0.25;
    if (panel.length().isPresent()) {
      Length length = panel.length().get();
      long least = input.ruler().frameAfter(place.cutAt(), length.unit(), length.least());
      long most = input.ruler().frameAfter(place.cutAt(), length.unit(), length.most());
      if (length.isRange() && (end < least || end > most)) {
        return Optional.empty();
      }
      if (!length.isRange()) {
        wanted = Math.max(1, most - place.cut());
        weight = 4;
      }
    }
    double share = frames / wanted;
    long cost = Math.round(1e6 * weight * (share + 1 / share - 2));
    for (RevealRoom room : place.rooms()) {
      Optional<Long> squeeze = squeeze(room, place.cut(), end);
      if (squeeze.isEmpty()) {
        return Optional.empty();
      }
      cost += squeeze.get();
    }
    return Optional.of(cost);
  }

  /** The first way that fits costs nothing if it is as asked, else half and by the share lost. */
  private static Optional<Long> squeeze(RevealRoom room, long cut, long end) {
    int asked = room.reveal().photographs();
    int rate = room.reveal().framesPerPhotograph();
    for (PhotographRun way : room.ways()) {
      long first = room.landsFrame() - (long) (way.landing() - 1) * way.framesPerPhotograph();
      long after = first + (long) way.shown() * way.framesPerPhotograph();
      if (first >= cut && after <= end) {
        boolean same = way.shown() == asked && way.framesPerPhotograph() == rate;
        double kept = (double) (way.shown() * way.framesPerPhotograph()) / (asked * rate);
        return Optional.of(same ? 0 : 500_000 + Math.round(3e6 * (1 - kept)));
      }
    }
    return Optional.empty();
  }
}
