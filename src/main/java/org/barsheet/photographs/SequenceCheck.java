package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.barsheet.input.InputException;
import org.barsheet.input.Prose;
import org.barsheet.photographs.Pairing.Paired;
import org.barsheet.plan.Tolerances;

/** Looks at photographs as they came out of a camera: which is which, and what is wrong. */
public final class SequenceCheck {

  private final PlannedSequence planned;
  private final List<Taken> taken;
  private final SequenceLooks looks;
  private final OpenMeasure open;
  private final List<String> questions = new ArrayList<>();

  private SequenceCheck(PlannedSequence planned, List<Taken> taken, SequenceLooks looks) {
    this.planned = planned;
    this.taken = taken;
    this.looks = looks;
    this.open = new OpenMeasure(planned, looks);
  }

  /**
   * Checks photographs.
   *
   * @param planned what they should be
   * @param taken in the order they were taken, at least one
   * @param first the photograph they are compared with where that is not the first of them: one
   *     taken earlier
   * @param filmWidth of the film's frame in pixels
   * @param filmHeight of the film's frame in pixels
   * @param each run once a photograph was looked at, in any thread
   * @throws InputException naming every photograph that cannot be decoded
   */
  public static CheckedSequence of(
      PlannedSequence planned,
      List<Taken> taken,
      Optional<Taken> first,
      Tolerances may,
      int filmWidth,
      int filmHeight,
      Runnable each) {
    int all = planned.photographs().size() + planned.plates().size();
    PlannedSequence whole = taken.size() == all ? planned.withPlates() : planned;
    SequenceLooks looks = SequenceLooks.of(whole, taken, first, filmWidth, filmHeight, each);
    return new SequenceCheck(whole, taken, looks).checked(may);
  }

  private CheckedSequence checked(Tolerances may) {
    Paired paired = paired();
    List<CheckedPhotograph> photographs = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int place = 0; place < planned.photographs().size(); place++) {
      int index = paired.planned().indexOf(place);
      if (index >= 0) {
        photographs.add(photograph(index, planned.photographs().get(place)));
        places.add(index);
      }
    }
    photographs = Calibration.of(photographs, open);
    SequenceFaults faults = new SequenceFaults(planned, looks, open, may);
    List<PhotographFault> found = faults.of(photographs, places);
    return new CheckedSequence(
        planned.name(),
        SequenceFaults.marked(photographs, found),
        unpaired(paired),
        paired.missing().stream().map(place -> planned.photographs().get(place).name()).toList(),
        questions,
        found,
        Cleanup.of(photographs),
        unmeasured());
  }

  private List<String> unmeasured() {
    List<String> unmeasured = new ArrayList<>();
    if (!looks.follows() && taken.size() > 1) {
      unmeasured.add("whether the camera moved: what stays still has too little texture");
    }
    open.reason().ifPresent(reason -> unmeasured.add("how far it is open: " + reason));
    return unmeasured;
  }

  private CheckedPhotograph photograph(int index, PlannedPhotograph photograph) {
    Look look = looks.looks().get(index);
    boolean measured = photograph.number() >= 0;
    return new CheckedPhotograph(
        taken.get(looks.order().get(index)),
        photograph,
        look.small(),
        look.move(),
        look.light(),
        look.sharpness(),
        look.clipped(),
        measured ? open.at(index) : OptionalDouble.empty(),
        open.planned(photograph),
        List.of());
  }

  private List<String> unpaired(Paired paired) {
    List<String> unpaired = new ArrayList<>();
    looks.otherSize().forEach(one -> unpaired.add(one.name()));
    looks.otherSubject().forEach(one -> unpaired.add(one.name()));
    for (int i = 0; i < paired.planned().size(); i++) {
      if (paired.planned().get(i) < 0) {
        unpaired.add(name(i));
      }
    }
    return unpaired;
  }

  private String name(int index) {
    return taken.get(looks.order().get(index)).name();
  }

  private Paired paired() {
    looks
        .otherSubject()
        .forEach(
            one -> questions.add(one.name() + " shows something else, a slate perhaps; left out"));
    looks.otherSize().forEach(one -> questions.add(one.name() + " has another size; left out"));
    int count = looks.looks().size();
    int wanted = planned.photographs().size();
    boolean comparable =
        open.isKnown()
            && planned.photographs().stream().allMatch(one -> open.planned(one).isPresent());
    if (!comparable) {
      return unseen(count, wanted);
    }
    double[] measured = new double[count];
    for (int i = 0; i < count; i++) {
      measured[i] = open.at(i).orElse(0);
    }
    double[] asked =
        planned.photographs().stream().mapToDouble(one -> open.planned(one).orElse(0)).toArray();
    double spread = Math.max(0.004, 0.7 / open.geometry().orElseThrow().travel());
    Paired best = new Pairing(measured, asked, spread).best();
    ask(best, count, wanted);
    return best;
  }

  /** Where nothing tells them apart, they are taken in order, and asked about if counts differ. */
  private Paired unseen(int count, int wanted) {
    if (count != wanted) {
      questions.add(
          Prose.count(count, "photograph")
              + " where the plan has "
              + wanted
              + "; taken one after another");
    }
    return Paired.inOrder(count, wanted);
  }

  private void ask(Paired best, int count, int wanted) {
    if (!best.exchanged().isEmpty()) {
      questions.add(
          name(best.exchanged().get(0))
              + " and "
              + name(best.exchanged().get(1))
              + " seem to have changed places: each is as far open as the other should be");
    }
    for (int i = 0; i < count; i++) {
      if (best.planned().get(i) < 0) {
        questions.add(name(i) + " is one too many" + alike(i));
      }
    }
    runs(best.missing()).forEach(run -> questions.add(missing(best, run)));
    if (questions.isEmpty() && count != wanted) {
      questions.add(Prose.count(count, "photograph") + " where the plan has " + wanted);
    }
  }

  /** Places one after another. */
  private static List<List<Integer>> runs(List<Integer> places) {
    List<List<Integer>> runs = new ArrayList<>();
    for (int place : places) {
      List<Integer> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
      if (last.isEmpty() || last.get(last.size() - 1) != place - 1) {
        last = new ArrayList<>();
        runs.add(last);
      }
      last.add(place);
    }
    return runs;
  }

  private String missing(Paired best, List<Integer> run) {
    List<PlannedPhotograph> those = run.stream().map(planned.photographs()::get).toList();
    return run.size() == 1
        ? those.get(0).name() + " is missing" + between(best, run.get(0))
        : Range.ofPlanned(those) + " are missing";
  }

  /** The neighbor that one too many looks like. */
  private String alike(int index) {
    int last = looks.looks().size() - 1;
    double own = open.at(index).orElse(0);
    double before = index == 0 ? Double.MAX_VALUE : Math.abs(open.at(index - 1).orElse(0) - own);
    double after = index == last ? Double.MAX_VALUE : Math.abs(open.at(index + 1).orElse(0) - own);
    int like = before < after ? index - 1 : index + 1;
    boolean isAlike = Math.min(before, after) * open.geometry().orElseThrow().travel() < 1.5;
    return isAlike ? ": it is as far open as " + name(like) : "";
  }

  private String between(Paired best, int place) {
    int before = best.planned().indexOf(place - 1);
    int after = best.planned().indexOf(place + 1);
    return before < 0 || after < 0
        ? ""
        : ": from " + name(before) + " to " + name(after) + " is a double step";
  }
}
