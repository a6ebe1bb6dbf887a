package org.barsheet.text;

import java.text.Normalizer;

/** Text for files that know nothing but ASCII. */
public final class Ascii {

  private Ascii() {}

  /** On one line, accents taken off; each run of what remains outside ASCII becomes '?'. */
  public static String line(String words) {
    return Normalizer.normalize(words, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .replaceAll("\\p{Cntrl}+", " ")
        .replaceAll("[^\\x20-\\x7E]+", "?")
        .strip();
  }
}
