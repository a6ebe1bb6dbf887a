package org.barsheet.production;

import java.nio.file.Path;
import java.util.Set;
import java.util.function.Consumer;
import org.barsheet.plan.read.PlanReader;

/**
 * Repeats some work whenever a plan, a file it names, or a performer's recording has been saved. A
 * file counts as saved when two looks in a row find the same change and something stands in it, so
 * that one still being written is left alone.
 */
public final class Watcher {

  private final Path plan;
  private final Consumer<Set<Path>> work;
  private final Pause pause;

  /** Waits between two looks. */
  @FunctionalInterface
  public interface Pause extends AutoCloseable {

    /** Waits a moment; returns whether to look again. */
    boolean thenLookAgain();

    /** Called when the watching has ended. */
    @Override
    default void close() {}
  }

  /**
   * Watches a plan.
   *
   * @param work what to do, told which files were saved; none the first time
   */
  public Watcher(Path plan, Consumer<Set<Path>> work, Pause pause) {
    this.plan = plan;
    this.work = work;
    this.pause = pause;
  }

  /** Works once, then after every save, until the pause says to end. */
  public void run() {
    Set<Path> saved = Set.of();
    do {
      // What is saved while the work goes on counts as saved after it.
      FileStates worked =
          new FileStates()
              .look(Set.of(plan))
              .look(PlanReader.filesOf(plan))
              .look(Clips.filesOf(plan));
      work.accept(saved);
      saved = nextSave(worked);
    } while (!saved.isEmpty());
  }

  /** The files saved next; none if the pause says to end. */
  private Set<Path> nextSave(FileStates worked) {
    FileStates last = worked;
    while (pause.thenLookAgain()) {
      FileStates now = last.again();
      Set<Path> changed = now.changedSince(worked);
      boolean still = now.changedSince(last).isEmpty() && !now.isAnyEmpty(changed);
      if (!changed.isEmpty() && still) {
        return changed;
      }
      last = now;
    }
    return Set.of();
  }
}
