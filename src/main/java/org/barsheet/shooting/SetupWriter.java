package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.shooting.Draft.Work;
import org.barsheet.shooting.order.Paper;

/** Numbers setups in the order of work, and says what each step wants done to the paper. */
final class SetupWriter {

  private final CameraViews views;
  private final Optional<Rates> rates;
  private final List<Draft> drafts;
  private final List<Slot> slots;
  private final Map<String, Paper> papers = new HashMap<>();

  SetupWriter(CameraViews views, Optional<Rates> rates, List<Draft> drafts, List<Slot> slots) {
    this.views = views;
    this.rates = rates;
    this.drafts = drafts;
    this.slots = slots;
  }

  /** All setups, in the order of work. */
  List<Setup> all() {
    List<Setup> setups = new ArrayList<>();
    slots.stream()
        .mapToInt(Slot::setup)
        .distinct()
        .forEach(number -> setups.add(setup(setups.size() + 1, number)));
    return setups;
  }

  private Setup setup(int number, int which) {
    Draft draft = drafts.get(which);
    List<Step> steps = draft.works().stream().map(work -> step(draft.paper(), work)).toList();
    int photographs = steps.stream().mapToInt(step -> step.take().photographs()).sum();
    return new Setup(
        number,
        draft.works().get(0).model(),
        views.of(draft.works().stream().map(Work::sight).distinct().toList()),
        steps,
        SetupCautions.of(
            draft.works().stream().flatMap(work -> work.cautioned().stream()).toList(),
            steps,
            photographs),
        WorkTimes.of(slots.stream().filter(slot -> slot.setup() == which).toList(), rates));
  }

  private Step step(String name, Work work) {
    Paper paper = papers.computeIfAbsent(name, key -> new Paper());
    List<String> fresh = paper.tooFarFor(work.job());
    List<String> toOpen = paper.toOpenFor(work.job());
    paper.take(work.job());
    return new Step(
        fresh,
        work.take().standing().stream().filter(one -> toOpen.contains(one.opening())).toList(),
        work.take());
  }
}
