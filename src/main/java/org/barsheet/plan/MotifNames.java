package org.barsheet.plan;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import org.barsheet.input.SyntaxException;
import org.barsheet.motif.Form;

/**
 * What a motif may be called: words that begin with a letter and go on with letters, digits, {@code
 * -}, {@code _}, {@code '} or {@code .}, so that a place that names it can be told from all others.
 */
public final class MotifNames {

  private static final Set<String> TAKEN = Set.of("bar", "mark");
  private static final String REMEDY = "write words that begin with a letter: glimmer, night-tide";

  private MotifNames() {}

  /** Index of the first character that cannot stand in a word of a motif's name, or −1. */
  static int firstWrong(String word) {
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      boolean inside = i > 0 && (Character.isLetterOrDigit(c) || "-_'’.".indexOf(c) >= 0);
      boolean mark = i > 0 && Character.getType(c) == Character.NON_SPACING_MARK;
      if (!Character.isLetter(c) && !inside && !mark) {
        return i;
      }
    }
    return -1;
  }

  /**
   * The name itself, if places can use it.
   *
   * @throws SyntaxException if they could not
   */
  public static String check(String text) {
    String name = text.strip();
    int offset = 0;
    for (String word : name.split(" ", -1)) {
      int wrong = word.isEmpty() ? 0 : firstWrong(word);
      if (wrong >= 0) {
        throw new SyntaxException(name, offset + wrong, "this can't be a motif's name", REMEDY);
      }
      boolean taken = offset == 0 ? isTaken(word) : saysWhich(word);
      if (taken) {
        throw new SyntaxException(
            name,
            offset,
            "'" + word + "' already means something else in a place",
            offset == 0 ? REMEDY : "join the words: " + name.replaceAll(" +", "-"));
      }
      offset += word.length() + 1;
    }
    return name;
  }

  /** Whether a place would go on with it: {@code glimmer inverted in Oboe near bar 33}. */
  private static boolean saysWhich(String word) {
    return word.equalsIgnoreCase("near")
        || word.equalsIgnoreCase("in")
        || Arrays.stream(Form.values())
            .anyMatch(form -> form.word().split(" ", -1)[0].equalsIgnoreCase(word));
  }

  private static boolean isTaken(String word) {
    return TAKEN.contains(word.toLowerCase(Locale.ROOT));
  }
}
