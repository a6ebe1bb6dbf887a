package org.barsheet.production;

/** Hears what is being done, for whoever waits. */
@FunctionalInterface
public interface Progress {

  /** Nobody listens. */
  Progress SILENT = doing -> {};

  /**
   * A step begins.
   *
   * @param doing in the present tense: "finding glimmer"
   */
  void step(String doing);
}
