package org.barsheet.plan.source;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.barsheet.plan.Where;

/**
 * Names that files are called after. Many disks take names for one that differ only in capitals, or
 * in how an accent is spelled (Unicode Standard Annex 15): the second file would replace the first.
 */
public final class NamesOnDisk {

  private final Problems problems;

  public NamesOnDisk(Problems problems) {
    this.problems = problems;
  }

  /**
   * Reports every name that is another one's on such a disk.
   *
   * @param plural what they are: {@code openings}
   */
  public <T> void check(
      String plural, List<T> things, Function<T, String> name, Function<T, Where> at) {
    Map<String, String> taken = new HashMap<>();
    for (T thing : things) {
      String own = name.apply(thing);
      String other = taken.putIfAbsent(onDisk(own), own);
      if (other != null && !other.equals(own)) {
        problems.add(
            at.apply(thing),
            plural
                + " "
                + other
                + " and "
                + own
                + (own.equalsIgnoreCase(other) ? " differ only in capitals" : " look the same")
                + ": on many disks they would be the same file",
            "give one of them another name");
      }
    }
  }

  private static String onDisk(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
  }
}
