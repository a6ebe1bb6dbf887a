package org.barsheet.plan.source;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/** Makes text of the bytes of a plan or table. */
public final class PlanFile {

  /** Characters of one line: reading time grows with its square. */
  static final int LONGEST_LINE = 200_000;

  private PlanFile() {}

  private static InputException problem(String name, String sentence, String remedy) {
    return new InputException(Problem.ofFile(name, sentence, remedy));
  }

  /**
   * The text of a file in UTF-8, or in UTF-16 where its byte order mark says so; line ends become
   * line feeds.
   *
   * @throws InputException if the bytes are no text
   */
  public static String text(Path file, byte[] bytes) {
    if (startsWith(bytes, 'M', 'T', 'h', 'd')) {
      throw problem(
          file.toString(),
          "this is a MIDI file, not a plan",
          "write a plan for it: barsheet begin " + file);
    }
    String text;
    try {
      text = charset(bytes).newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException wrong) {
      throw new InputException(
          Problem.at(
              file.toString(),
              "line " + firstWrongLine(bytes),
              "the text is not UTF-8",
              "save the file again as UTF-8"));
    }
    String whole = text.startsWith("\uFEFF") ? text.substring(1) : text;
    String lines = whole.replace("\r\n", "\n").replace('\r', '\n');
    checkLines(file, lines);
    return lines;
  }

  /** How a plan's bytes are read: as UTF-8, or as UTF-16 where their byte order mark says so. */
  public static Charset charset(byte[] bytes) {
    boolean wide = startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE);
    return wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
  }

  private static boolean startsWith(byte[] bytes, int... start) {
    return bytes.length >= start.length
        && IntStream.range(0, start.length).allMatch(i -> (bytes[i] & 0xFF) == start[i]);
  }

  /** Lines whose bytes decode alone come before the first that does not. */
  private static int firstWrongLine(byte[] bytes) {
    int line = 1;
    int start = 0;
    for (int i = 0; i <= bytes.length; i++) {
      if (i == bytes.length || bytes[i] == '\n') {
        if (!decodes(bytes, start, i)) {
          return line;
        }
        line++;
        start = i + 1;
      }
    }
    return line - 1;
  }

  private static boolean decodes(byte[] bytes, int from, int to) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, from, to - from));
      return true;
    } catch (CharacterCodingException wrong) {
      return false;
    }
  }

  private static void checkLines(Path file, String text) {
    int line = 1;
    int start = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n') {
        line++;
        start = i + 1;
      } else if (Character.isISOControl(c) && c != '\t' && c != '\u0085') {
        throw atLine(file, line, "there is a control character in the text");
      } else if (i - start >= LONGEST_LINE) {
        throw atLine(file, line, "the line is longer than " + LONGEST_LINE + " characters");
      }
    }
  }

  private static InputException atLine(Path file, int line, String sentence) {
    String remedy = "check that this is a plan";
    return new InputException(Problem.at(file.toString(), "line " + line, sentence, remedy));
  }
}
