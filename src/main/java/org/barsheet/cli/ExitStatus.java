package org.barsheet.cli;

/** What the program tells the shell when it ends. */
final class ExitStatus {

  static final int DONE = 0;

  /** {@code check} met findings at or above the level asked to fail on. */
  static final int FINDINGS = 1;

  /** The command line itself is wrong. */
  static final int USAGE = 2;

  /** A score, a plan or a folder cannot be used. */
  static final int BAD_INPUT = 3;

  /** A fault of this program (EX_SOFTWARE of BSD's sysexits.h). */
  static final int OWN_FAULT = 70;

  private ExitStatus() {}
}
