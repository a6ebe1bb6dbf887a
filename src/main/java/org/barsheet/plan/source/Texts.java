package org.barsheet.plan.source;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.barsheet.input.NamesHere;
import org.barsheet.input.PlainText;
import org.barsheet.input.SyntaxException;

/** Reads free texts, names and file names. */
public final class Texts {

  /** A name longer than this fits no column heading, file name or card. */
  private static final int LONGEST_NAME = 60;

  /** More than this is no action of a panel; a spreadsheet's cell holds 32,767 characters. */
  private static final int LONGEST_TEXT = 10_000;

  private Texts() {}

  /** Text for people: line ends become spaces. */
  public static String plain(String text) {
    String line = text.replaceAll("[\\s\\h\\v]+", " ").strip();
    for (int i = 0; i < line.length(); i++) {
      if (Character.isISOControl(line.charAt(i))) {
        String sentence = "there is a control character in the text";
        throw new SyntaxException(line, i, sentence, "type it again; watch for \\ in quotes");
      }
    }
    if (line.length() > LONGEST_TEXT) {
      String sentence = line.length() + " characters are too many; the limit is " + LONGEST_TEXT;
      String start = PlainText.shortened(line, LONGEST_NAME);
      throw new SyntaxException(start, LONGEST_NAME, sentence, "");
    }
    return line;
  }

  /** A name other parts of the plan use. */
  public static String name(String text) {
    String name = plain(text);
    if (name.length() > LONGEST_NAME) {
      String sentence = "the name is longer than " + LONGEST_NAME + " characters";
      throw new SyntaxException(name, LONGEST_NAME, sentence, "shorten it");
    }
    return name;
  }

  /** A panel's name, one word, so that {@code 2 bars into panel 1.10} ends where it ends. */
  public static String panelName(String text) {
    String name = name(text);
    int space = name.indexOf(' ');
    if (space >= 0) {
      throw new SyntaxException(name, space, "a panel's name is one word", "write 12-A or 1.10");
    }
    return name;
  }

  /** The name of a file; folders may be parted by / or \. */
  public static Path file(String text) {
    String name = text.strip().replace('\\', '/');
    for (int i = 0; i < name.length(); i++) {
      if (Character.isISOControl(name.charAt(i))) {
        String remedy = "write / between folders, or the path in single quotes: 'C:\\music'";
        throw new SyntaxException(name, i, "there is a control character in the file name", remedy);
      }
    }
    try {
      return Path.of(name);
    } catch (InvalidPathException wrong) {
      String sentence = "'" + name + "' can't be a file name";
      String remedy = NamesHere.remedy(name).orElse("check the name");
      throw new SyntaxException(name, Math.max(0, wrong.getIndex()), sentence, remedy);
    }
  }
}
