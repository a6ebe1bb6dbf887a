package org.barsheet.exposure;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.plan.Performer;
import org.barsheet.text.Sha256;

/**
 * Names for files that are legal on every common system and stay inside their folder. A name that
 * is legal already is left as it is; any other is cleaned and made unique by a few digits of its
 * SHA-256.
 */
public final class FileNames {

  private static final int MOST_CHARACTERS = 60;
  private static final int MOST_BYTES = 200;
  private static final int DIGEST_DIGITS = 8;
  private static final String FORBIDDEN = "\\/:*?\"<>|%#";
  private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul");

  /** A movement's name and a photograph's number. */
  private static final Pattern NUMBERED = Pattern.compile("(?s)(.*)( \\d{3,})");

  private FileNames() {}

  /** A file's name without folders and extension: what is made from a plan begins with it. */
  public static String withoutExtension(Path file) {
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /**
   * Whether files named after a plan would have names longer than disks hold: 255 bytes (NAME_MAX
   * of Linux's limits.h), of which endings, kept copies and files in the making take up to 55.
   */
  public static boolean isTooLong(String name) {
    return name.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES;
  }

  /** The sound file of the click track. */
  public static String click(String name) {
    return name + "-click.wav";
  }

  /** The sound file with the score as a guide. */
  public static String guide(String name) {
    return name + "-guide.wav";
  }

  /** The movie of the film. */
  public static String movie(String name) {
    return name + ".mp4";
  }

  /** The movie with head, pop and click. */
  public static String movieWithClick(String name) {
    return name + ".mov";
  }

  /** The video that a performer plays along with: {@code celesta-guide.mp4}. */
  public static String guideVideo(Performer performer) {
    return safe(performer.name()) + "-guide.mp4";
  }

  /** What there is to say of the movie. */
  public static String aboutMovie(String name) {
    return name + "-movie.txt";
  }

  /**
   * The file a photograph is kept in, without its extension: {@code small-lamp 014}.
   *
   * @param name its permanent name
   */
  public static String ofPhotograph(String name) {
    Matcher numbered = NUMBERED.matcher(name);
    return numbered.matches() ? safe(numbered.group(1)) + numbered.group(2) : safe(name);
  }

  /** The file a performer is asked to deliver, or "" where the plan names none. */
  public static String ofClip(Performer performer) {
    return performer.clip().isEmpty() ? "" : safe(performer.clip());
  }

  /** A legal name for one file or folder; the same name always gives the same. */
  public static String safe(String name) {
    StringBuilder cleaned = new StringBuilder();
    name.codePoints()
        .limit(MOST_CHARACTERS)
        .forEach(c -> cleaned.appendCodePoint(isLegal(c) ? c : '_'));
    String legal = cleaned.toString();
    boolean awkward =
        legal.isEmpty()
            || legal.startsWith(".")
            || legal.endsWith(".")
            || !legal.equals(legal.strip())
            || isReserved(legal);
    if (legal.equals(name) && !awkward) {
      return name;
    }
    String body = legal.strip().replaceAll("^\\.+|\\.+$", "_");
    String free = isReserved(body) ? "_" + body : body;
    return (free.isEmpty() ? "unnamed" : free) + "-" + Sha256.hex(name).substring(0, DIGEST_DIGITS);
  }

  private static boolean isLegal(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> FORBIDDEN.indexOf(character) < 0;
    };
  }

  /** Device names that some systems keep for themselves, with or without an extension. */
  private static boolean isReserved(String name) {
    int dot = name.indexOf('.');
    String stem = (dot < 0 ? name : name.substring(0, dot)).toLowerCase(Locale.ROOT);
    return RESERVED.contains(stem) || stem.matches("(com|lpt)[0-9]");
  }
}
