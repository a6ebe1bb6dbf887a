package org.barsheet.movie;

/** Hears how far a movie has come. */
@FunctionalInterface
public interface FramesDone {

  /** So many frames of all are done. */
  void done(long frames, long all);
}
