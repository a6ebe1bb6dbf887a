package org.barsheet.cli;

import java.io.Console;

/** Whether a person watches. */
final class Terminal {

  private Terminal() {}

  /**
   * Whether the program runs on a terminal. From JDK 22 on there is always a console, and it must
   * be asked whether it is a terminal; before that there is one only on a terminal.
   */
  @SuppressWarnings("SystemConsoleNull") // older JDKs answer null, and newer ones are asked below
  static boolean isWatched() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException olderJdk) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
