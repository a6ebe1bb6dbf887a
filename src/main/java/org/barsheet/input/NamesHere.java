package org.barsheet.input;

import java.nio.charset.Charset;
import java.util.Optional;

/** Names that files can have on this computer: some locales know no letters but A to Z. */
public final class NamesHere {

  private NamesHere() {}

  /** What to do about a file name that this locale cannot spell; nothing where it can. */
  public static Optional<String> remedy(String name) {
    return canSpell(name) ? Optional.empty() : Optional.of(remedy());
  }

  /**
   * Java spells file names in the encoding it found in the locale; U+FFFD stands where it could not
   * read a letter it was given.
   */
  private static boolean canSpell(String name) {
    String encoding = System.getProperty("sun.jnu.encoding", "UTF-8");
    return name.indexOf('\uFFFD') < 0
        && (!Charset.isSupported(encoding)
            || Charset.forName(encoding).newEncoder().canEncode(name));
  }

  private static String remedy() {
    return "this system's locale limits the letters of file names;"
        + " set a UTF-8 one (LC_ALL=C.UTF-8) and try again";
  }
}
