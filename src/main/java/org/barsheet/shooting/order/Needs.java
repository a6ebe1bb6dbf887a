package org.barsheet.shooting.order;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** What jobs ask of the flaps, in numbers to count with. */
final class Needs {

  /** Of a flap that a job does not ask anything of. */
  private static final double NOTHING = -1;

  private final double[][] before;
  private final double[][] after;
  private final int[] views;

  Needs(List<Job> jobs) {
    TreeSet<String> names = new TreeSet<>();
    jobs.forEach(job -> names.addAll(job.flaps().keySet()));
    List<String> flaps = new ArrayList<>(names);
    before = new double[jobs.size()][flaps.size()];
    after = new double[jobs.size()][flaps.size()];
    views = jobs.stream().mapToInt(Job::view).toArray();
    for (int job = 0; job < before.length; job++) {
      for (int flap = 0; flap < flaps.size(); flap++) {
        Job.Level level = jobs.get(job).flaps().get(flaps.get(flap));
        before[job][flap] = level == null ? NOTHING : level.before();
        after[job][flap] = level == null ? NOTHING : level.after();
      }
    }
  }

  int jobs() {
    return before.length;
  }

  int flaps() {
    return before.length == 0 ? 0 : before[0].length;
  }

  int view(int job) {
    return views[job];
  }

  private boolean asks(int job, int flap) {
    return before[job][flap] != NOTHING;
  }

  /** How many flaps have to be cut afresh for a job. */
  int fresh(int job, double[] open) {
    int fresh = 0;
    for (int flap = 0; flap < open.length; flap++) {
      fresh += asks(job, flap) && open[flap] > before[job][flap] ? 1 : 0;
    }
    return fresh;
  }

  /** How the flaps stand after a job. */
  double[] after(int job, double[] open) {
    double[] left = open.clone();
    for (int flap = 0; flap < open.length; flap++) {
      left[flap] = asks(job, flap) ? after[job][flap] : open[flap];
    }
    return left;
  }

  /** Whether no flap matters to both, so that either may come first. */
  boolean areApart(int job, int other) {
    for (int flap = 0; flap < flaps(); flap++) {
      if (asks(job, flap) && asks(other, flap)) {
        return false;
      }
    }
    return true;
  }

  /**
   * No order of some jobs wants fewer flaps cut afresh than this. On one flap they are stretches
   * from where it stands before to where it stands after; stretches that overlap need a flap each.
   */
  int leastFresh(long jobs, double[] open) {
    int least = 0;
    for (int flap = 0; flap < flaps(); flap++) {
      least += leastFresh(jobs, flap, open[flap]);
    }
    return least;
  }

  private int leastFresh(long jobs, int flap, double open) {
    int most = 0;
    for (long left = jobs; left != 0; left &= left - 1) {
      int job = Long.numberOfTrailingZeros(left);
      if (asks(job, flap)) {
        most = Math.max(most, overlapping(jobs, flap, job) + (open > before[job][flap] ? 1 : 0));
      }
    }
    return Math.max(0, most - 1);
  }

  /** Jobs that the flap of one job cannot serve as well: those that are under way where it is. */
  private int overlapping(long jobs, int flap, int one) {
    double at = before[one][flap];
    boolean still = after[one][flap] == at;
    int count = still ? 1 : 0;
    for (long left = jobs; left != 0; left &= left - 1) {
      int job = Long.numberOfTrailingZeros(left);
      boolean moves = asks(job, flap) && after[job][flap] > before[job][flap];
      boolean begun = still ? before[job][flap] < at : before[job][flap] <= at;
      count += moves && begun && at < after[job][flap] ? 1 : 0;
    }
    return count;
  }
}
