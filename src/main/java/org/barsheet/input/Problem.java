package org.barsheet.input;

import java.util.List;
import java.util.regex.Pattern;

/**
 * One thing that is wrong with material a person gave us: where it is, what is wrong, what to do.
 *
 * @param file the file as the person named it, or "" where there is none (a command-line argument)
 * @param position the place in the file ("line 12", "byte 312", "sheet Panels, cell C4"), or "" for
 *     the file as a whole
 * @param sentence what is wrong, without a closing full stop
 * @param remedy what to do about it, or "" where nothing can be said
 * @param excerpt lines that show the place (the text and a caret under it), possibly none
 */
public record Problem(
    String file, String position, String sentence, String remedy, List<String> excerpt) {

  private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");

  public Problem {
    file = visible(file);
    position = visible(position);
    sentence = visible(sentence);
    remedy = visible(remedy);
    excerpt = excerpt.stream().map(Problem::visible).toList();
  }

  /** Words of a file may stand in it, and what a terminal would take for an order of ours. */
  private static String visible(String words) {
    return CONTROL.matcher(words).replaceAll(" ");
  }

  /** A problem of a file as a whole. */
  public static Problem ofFile(String file, String sentence, String remedy) {
    return new Problem(file, "", sentence, remedy, List.of());
  }

  /** A problem at a place in a file. */
  public static Problem at(String file, String position, String sentence, String remedy) {
    return new Problem(file, position, sentence, remedy, List.of());
  }

  /** A problem inside one short text that stands at a place in a file. */
  public static Problem at(String file, String position, SyntaxException inText) {
    return new Problem(file, position, inText.sentence(), inText.remedy(), inText.excerpt());
  }

  /** The problem as printed: one line with place and sentence, the excerpt, the remedy. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(file);
    if (!position.isEmpty()) {
      text.append(text.isEmpty() ? "" : ", ").append(position);
    }
    text.append(text.isEmpty() ? "" : ": ").append(sentence);
    for (String line : excerpt) {
      text.append("\n    ").append(line);
    }
    if (!remedy.isEmpty()) {
      text.append("\n  ").append(remedy);
    }
    return text.toString();
  }
}
