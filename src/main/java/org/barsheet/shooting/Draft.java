package org.barsheet.shooting;

import java.util.List;
import java.util.stream.DoubleStream;
import org.barsheet.plan.Artwork;
import org.barsheet.shooting.DayFiller.Piece;
import org.barsheet.shooting.order.Job;

/**
 * A setup before its place in the order of work is known.
 *
 * @param paper what it is taken on: setups on one piece of paper keep their order
 * @param works what it takes, in order
 */
record Draft(String paper, List<Work> works) {

  /**
   * Something to photograph.
   *
   * @param shot index of the first shot that shows it
   * @param take what it is
   * @param sight what the camera has to see
   * @param job what it asks of the paper
   * @param cautioned the movement, for what to mind; none where nothing moves
   */
  record Work(int shot, Take take, Sight sight, Job job, List<MovementWork> cautioned) {

    Artwork.Model model() {
      return sight.model();
    }

    Piece piece() {
      double[] steps = new double[take.photographs() - 1];
      if (take instanceof Setup.Run run) {
        double before = 0;
        int step = 0;
        for (var moved : run.movement().moved()) {
          if (!moved.isLikeBefore()) {
            steps[step++] = Math.abs(moved.progress() - before);
            before = moved.progress();
          }
        }
      }
      return new Piece(DoubleStream.of(steps).boxed().toList());
    }
  }

  /** Whether some flap matters to both. */
  boolean sharesPaperWith(Draft other) {
    return paper.equals(other.paper)
        && works.stream()
            .flatMap(work -> work.job().flaps().keySet().stream())
            .anyMatch(
                flap ->
                    other.works.stream().anyMatch(work -> work.job().flaps().containsKey(flap)));
  }
}
