package org.barsheet.align;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.CutWindow;
import org.barsheet.align.places.LengthTable;
import org.barsheet.align.places.LengthTable.Range;
import org.barsheet.align.places.PanelCuts;
import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;

/**
 * The places of a whole plan. Panels that ask the same share theirs; those of the others are made
 * for the frames that matter only.
 */
final class PlanPlaces {

  private final AlignerInput input;
  private final List<PanelCuts> panels;
  private final LengthTable lengths;
  private final List<Candidate> besides;
  private final Map<List<Object>, List<Candidate>> lists = new HashMap<>();
  private final IdentityHashMap<List<Candidate>, Map<Optional<Length>, PlaceCosts>> costs =
      new IdentityHashMap<>();
  private final Map<Integer, List<Candidate>> every = new HashMap<>();
  private final boolean[] offTheBeat;
  private final List<PanelTerms> terms;

  /**
   * The places of a plan.
   *
   * @param besides one further place for each panel, or none at all
   */
  PlanPlaces(
      AlignerInput input, List<PanelCuts> panels, LengthTable lengths, List<Candidate> besides) {
    this.input = input;
    this.panels = panels;
    this.lengths = lengths;
    this.besides = besides;
    this.offTheBeat = new boolean[panels.size()];
    for (int p = 0; p < panels.size(); p++) {
      boolean before = p > 0 && offTheBeat[p - 1];
      offTheBeat[p] = !panels.get(p).isFree() || (p > 0 && panels.get(p).followsOffTheBeat(before));
    }
    this.terms = IntStream.range(0, panels.size()).mapToObj(this::termsOf).toList();
  }

  /** What bounds each panel's shot. */
  List<PanelTerms> terms() {
    return terms;
  }

  private PanelTerms termsOf(int p) {
    PanelTerms own = ownTerms(p);
    return besides.isEmpty() ? own : own.or(terms(p, List.of(besides.get(p))));
  }

  private PanelTerms ownTerms(int p) {
    if (isShared(p)) {
      return PanelTerms.of(shared(p, sharedList(p)), input.panels().get(p).length());
    }
    return panels.get(p).isFixed()
        ? terms(p, panels.get(p).after(List.of()))
        : anywhere(p, panels.get(p));
  }

  private PanelTerms terms(int p, List<Candidate> places) {
    return PanelTerms.of(own(p, places), input.panels().get(p).length());
  }

  /** Whether its places are those of every panel that asks the same. */
  private boolean isShared(int p) {
    return panels.get(p).isPlain() && !(panels.get(p).isFree() && offTheBeat[p]);
  }

  private List<Candidate> sharedList(int p) {
    return panels.get(p).isFree()
        ? input.freePlaces()
        : lists.computeIfAbsent(panels.get(p).asksAs(), a -> panels.get(p).after(List.of()));
  }

  private boolean followsOffTheBeat(int p) {
    return p > 0 && panels.get(p).followsOffTheBeat(offTheBeat[p - 1]);
  }

  /**
   * Every place of a panel, whatever frames matter, where the one after it may follow off the beat:
   * what follows must not change with the frames that matter. Beats, which nothing follows exactly,
   * are left out.
   */
  private List<Candidate> off(int p) {
    List<Candidate> known = every.get(p);
    if (known == null) {
      List<Candidate> places = everyPlace(p);
      known =
          panels.get(p).isFree()
              ? places.stream().filter(place -> !place.kind().isFree()).toList()
              : places;
      every.put(p, known);
    }
    return known;
  }

  private List<Candidate> everyPlace(int p) {
    if (isShared(p)) {
      return sharedList(p);
    }
    if (panels.get(p).hangsOnPanelBefore()) {
      return panels.get(p).after(everyPlace(p - 1));
    }
    return panels.get(p).after(followsOffTheBeat(p) ? off(p - 1) : List.of());
  }

  private PlaceCosts shared(int p, List<Candidate> places) {
    return costs
        .computeIfAbsent(places, l -> new HashMap<>())
        .computeIfAbsent(input.panels().get(p).length(), l -> own(p, places));
  }

  private PlaceCosts own(int p, List<Candidate> places) {
    Panel panel = input.panels().get(p);
    return new PlaceCosts(places, panel.length(), input.lockOf(panel), lengths, input.meanLength());
  }

  /** The terms of a panel with many places of its own, which are not made for it. */
  private PanelTerms anywhere(int p, PanelCuts panel) {
    long film = input.filmFrames();
    Optional<Length> asked = input.panels().get(p).length();
    Optional<FrameSpan> lock = input.lockOf(input.panels().get(p));
    Range wanted = wanted(asked);
    long least = 1;
    long most = film;
    if (lock.isEmpty() && asked.isPresent() && asked.get().isRange()) {
      Length range = asked.get();
      least = Math.max(1, lengths.range(range.unit(), range.least()).least());
      most = lengths.range(range.unit(), range.most()).most();
    }
    return new PanelTerms(
        lock.map(l -> new CutWindow(l.start(), l.start())).orElse(new CutWindow(0, film - 1)),
        least,
        most,
        PlaceCosts.weight(asked),
        Math.max(1, wanted.least()),
        Math.max(1, wanted.most()),
        panel.leastCost());
  }

  /** The lengths a shot may like best, in frames; the mean where nothing is asked. */
  private Range wanted(Optional<Length> asked) {
    double mean = input.meanLength();
    return asked
        .filter(length -> !length.isRange())
        .map(length -> lengths.range(length.unit(), length.most()))
        .orElse(new Range((long) Math.floor(mean), (long) Math.ceil(mean)));
  }

  /**
   * Every panel with the places it can take.
   *
   * @param windows the frames each panel may begin on
   */
  List<Stage> within(List<CutWindow> windows) {
    List<List<Candidate>> places = new ArrayList<>();
    List<Candidate> before = List.of();
    for (int p = 0; p < panels.size(); p++) {
      before = places(p, before, windows.get(p));
      places.add(before);
    }
    SharedCues cues = new SharedCues(places, lists(places));
    List<List<Candidate>> apart = cues.toldApart();
    List<Stage> stages = new ArrayList<>();
    for (int p = 0; p < panels.size(); p++) {
      stages.add(stage(p, apart.get(p), apart.get(p) == places.get(p), windows.get(p), cues));
    }
    return stages;
  }

  /** The lists that panels' places were taken from, each once. */
  private Set<List<Candidate>> lists(List<List<Candidate>> places) {
    Set<List<Candidate>> lists = Collections.newSetFromMap(new IdentityHashMap<>());
    for (int p = 0; p < panels.size(); p++) {
      lists.add(isShared(p) && besides.isEmpty() ? sharedList(p) : places.get(p));
    }
    return lists;
  }

  private List<Candidate> places(int p, List<Candidate> before, CutWindow window) {
    List<Candidate> places =
        isShared(p) ? window.of(sharedList(p)) : panels.get(p).after(before(p, before), window);
    return besides.isEmpty() ? places : PanelCuts.inFilm(places, besides.get(p));
  }

  /** Where the places of the panel before lead to this panel's own. */
  private List<Candidate> before(int p, List<Candidate> within) {
    if (!followsOffTheBeat(p)) {
      return within;
    }
    return panels.get(p).hangsOnPanelBefore() ? everyPlace(p - 1) : off(p - 1);
  }

  private Stage stage(
      int p, List<Candidate> places, boolean asShared, CutWindow window, SharedCues cues) {
    Panel panel = input.panels().get(p);
    if (!asShared || !isShared(p) || !besides.isEmpty()) {
      return new Stage(p, panel, own(p, places), 0, places.size(), cues);
    }
    PlaceCosts all = shared(p, sharedList(p));
    int from = window.first() == Long.MIN_VALUE ? 0 : all.firstFrom(window.first());
    return new Stage(p, panel, all, from, from + places.size(), cues);
  }
}
