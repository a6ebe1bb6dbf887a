package org.barsheet.production.publish;

import java.nio.channels.FileChannel;

/**
 * A disk whose program is killed before one of its changes: that one and all later ones fail. It
 * waits for nothing, as the computer goes on.
 */
public class DyingDisk extends Disk {

  private int left;

  /** A program that is not killed. */
  public DyingDisk() {
    this(-1);
  }

  /**
   * A program that is killed.
   *
   * @param steps how many changes it makes before
   */
  public DyingDisk(int steps) {
    this.left = steps;
  }

  /** Passes through everything that handles what may go wrong. */
  public static final class Killed extends Error {
    private static final long serialVersionUID = 1L;
  }

  @Override
  protected void step() {
    if (left == 0) {
      throw new Killed();
    }
    left--;
  }

  @Override
  protected void force(FileChannel file) {
    // See above.
  }
}
