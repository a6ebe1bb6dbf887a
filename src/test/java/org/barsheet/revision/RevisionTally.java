package org.barsheet.revision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.barsheet.revision.Fate.Gone;
import org.barsheet.revision.Fate.Undecided;

/** How many bars and returns of invented revisions are found again. */
final class RevisionTally {

  int kept;
  int sure;
  int asked;
  int wrong;
  int lost;
  int deleted;
  int deletionsTold;
  int deletionsAsked;
  int returns;
  int returnsSure;
  int returnsAsked;
  int returnsWrong;
  int renumbered;
  int renumberingsTold;
  final List<Long> wrongSeeds = new ArrayList<>();

  static RevisionTally of(long firstSeed, int revisions) {
    RevisionTally tally = new RevisionTally();
    for (long seed = firstSeed; seed < firstSeed + revisions; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Piece before = Piece.invented(random);
      tally.add(seed, before, Reviser.revised(before, random));
    }
    return tally;
  }

  private void add(long seed, Piece before, Piece now) {
    Revision revision = Revision.between(before.notes(), now.notes());
    int wrongBefore = wrong + returnsWrong;
    bars(before, now, revision);
    returns(before, now, revision);
    if (wrong + returnsWrong > wrongBefore) {
      wrongSeeds.add(seed);
    }
  }

  private void bars(Piece before, Piece now, Revision revision) {
    Map<Integer, Integer> places = new HashMap<>();
    for (int j = 0; j < now.bars().size(); j++) {
      places.put(now.bars().get(j).id(), j);
    }
    for (int i = 0; i < before.bars().size(); i++) {
      Integer truth = places.get(before.bars().get(i).id());
      Fate<Integer> fate = revision.ofBar(i);
      if (truth == null) {
        deleted++;
        deletionsTold += fate instanceof Gone ? 1 : 0;
        deletionsAsked += fate instanceof Undecided<Integer> ? 1 : 0;
      } else {
        kept++;
        bar(fate, truth);
      }
    }
  }

  private void bar(Fate<Integer> fate, int truth) {
    if (fate instanceof Undecided<Integer> undecided) {
      asked += undecided.candidates().contains(truth) ? 1 : 0;
      wrong += undecided.candidates().contains(truth) ? 0 : 1;
    } else if (fate.sure().isEmpty()) {
      lost++;
    } else {
      sure += fate.sure().get() == truth ? 1 : 0;
      wrong += fate.sure().get() == truth ? 0 : 1;
    }
  }

  private void returns(Piece before, Piece now, Revision revision) {
    List<HeldReturn> was = before.returns();
    List<HeldReturn> is = now.returns();
    List<Integer> ids = before.returnIds();
    List<Integer> idsNow = now.returnIds();
    List<Fate<HeldReturn>> fates = revision.ofReturns(was, is);
    for (int i = 0; i < was.size(); i++) {
      int there = idsNow.indexOf(ids.get(i));
      if (there >= 0) {
        one(fates.get(i), was.get(i), is.get(there));
      }
    }
  }

  private void one(Fate<HeldReturn> fate, HeldReturn was, HeldReturn truth) {
    returns++;
    boolean asks = fate instanceof Undecided<HeldReturn>;
    boolean right = fate.sure().map(truth::equals).orElse(false);
    returnsSure += right ? 1 : 0;
    returnsAsked += asks ? 1 : 0;
    returnsWrong += !right && !asks ? 1 : 0;
    if (was.number() != truth.number()) {
      renumbered++;
      boolean told = asks || fate.sure().map(now -> now.number() != was.number()).orElse(true);
      renumberingsTold += told ? 1 : 0;
    }
  }

  @Override
  public String toString() {
    return String.format(
        "bars kept %d: sure %d, asked %d, lost %d, wrong %d; deleted %d: told %d, asked %d;"
            + " returns %d: sure %d, asked %d, wrong %d; renumbered %d: told %d; wrong in %s",
        kept,
        sure,
        asked,
        lost,
        wrong,
        deleted,
        deletionsTold,
        deletionsAsked,
        returns,
        returnsSure,
        returnsAsked,
        returnsWrong,
        renumbered,
        renumberingsTold,
        wrongSeeds);
  }
}
