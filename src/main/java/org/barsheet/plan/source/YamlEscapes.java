package org.barsheet.plan.source;

import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * The escapes {@code \\L} and {@code \\P} of double-quoted texts, a line and a paragraph separator
 * (YAML 1.2.2, 5.7), which the library does not know. In a plan either parts words, so each becomes
 * {@code "\\ "}, an escaped space of the same length: places in the text stay true.
 */
final class YamlEscapes {

  /** Each costs one more look at the text. */
  private static final int MOST = 100;

  private YamlEscapes() {}

  /** The text with these escapes as spaces; what else is wrong with it stays. */
  static String known(String text, LoadSettings settings) {
    String known = text;
    for (int i = 0; i < MOST && (known.contains("\\L") || known.contains("\\P")); i++) {
      int at = firstUnknown(known, settings);
      if (at < 0) {
        return known;
      }
      known = known.substring(0, at) + ' ' + known.substring(at + 1);
    }
    return known;
  }

  /** Where the L or P of the first such escape stands, or -1. */
  private static int firstUnknown(String text, LoadSettings settings) {
    try {
      new Parse(settings).parseString(text).forEach(event -> {});
      return -1;
    } catch (MarkedYamlEngineException wrong) {
      int at = wrong.getProblemMark().map(mark -> offset(text, mark)).orElse(-1);
      boolean separator =
          at > 0 && text.charAt(at - 1) == '\\' && "LP".indexOf(text.charAt(at)) >= 0;
      return separator && String.valueOf(wrong.getProblem()).contains("escape") ? at : -1;
    } catch (YamlEngineException other) {
      return -1;
    }
  }

  private static int offset(String text, Mark mark) {
    int line = 0;
    for (int i = 0; i < mark.getLine(); i++) {
      line = text.indexOf('\n', line) + 1;
    }
    int end = text.indexOf('\n', line);
    String rest = text.substring(line, end < 0 ? text.length() : end);
    int columns = rest.codePointCount(0, rest.length());
    return mark.getColumn() < columns ? line + rest.offsetByCodePoints(0, mark.getColumn()) : -1;
  }
}
