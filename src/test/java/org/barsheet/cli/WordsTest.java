package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.barsheet.cli.Messages.Message;
import org.junit.jupiter.api.Test;

/**
 * One word for each thing, wherever a person reads: messages, help, sheets, page, files, guides.
 * All messages are written into {@code target/messages.txt}, to be read from top to bottom.
 */
class WordsTest {

  /** Words that are not used, and what is said instead. */
  private static final Map<String, String> INSTEAD =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("pictures?", "drawing, photograph or frame"),
              Map.entry("scenes?", "panel"),
              Map.entry("occurrences?", "return"),
              Map.entry("anchored", "placed"),
              Map.entry("players?", "performer"),
              Map.entry("rivals?", "alternative"),
              Map.entry("contradictions?", "conflict"),
              Map.entry("set-ups?", "setup"),
              Map.entry("pick-ups?|upbeats?", "pickup"),
              Map.entry("score lines?", "crease"),
              Map.entry("beats (a|to the) minute", "bpm"),
              Map.entry("frames a second", "fps"),
              Map.entry("tick 0", "start of file"),
              Map.entry("(?<!there )is no", "is not a"),
              Map.entry("sits?(?! down)|sat", "is on"),
              Map.entry("(still )?serves?", "usable"),
              Map.entry("let (it|them) be", "ignore"),
              Map.entry("that much more", "more"),
              Map.entry("fault of its own", "internal error"),
              Map.entry(
                  "\\w*(colour|centre|grey|licence|neighbour|favour|honour|metres?)\\w*",
                  "American spelling"),
              Map.entry("[✓✕◆▸Ⓐ]", "√ × ♦ ►")));

  private static final Pattern TEXT = Pattern.compile("\"(?:[^\"\\\\\n]|\\\\.)*\"|>[^<>{}]+<");

  /** The lamp stands of the cautions are real ones; everything else is, lies or goes somewhere. */
  private static final Pattern STANDS =
      Pattern.compile("(?<!(no|lamp|music) )\\bstands?\\b(?! (firm|at|are weighted))");

  @Test
  void messages_use_the_words_agreed_on() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (Message message : Messages.all()) {
      if (message.isSaid()) {
        wrong.addAll(wrong(message.where(), message.template()));
        wrong.addAll(found(STANDS, message.where(), message.template(), "is"));
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void help_uses_them() {
    List<String> wrong = new ArrayList<>();
    for (String command :
        List.of("", "make", "check", "about", "find", "beats", "where", "show", "compare")) {
      StringWriter said = new StringWriter();
      PrintWriter writer = new PrintWriter(said);
      Barsheet.run(
          writer,
          writer,
          Stream.of(command, "--help").filter(word -> !word.isEmpty()).toArray(String[]::new));
      wrong.addAll(wrong("help of " + command, said.toString()));
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void the_workbook_uses_them() throws IOException {
    List<String> wrong = new ArrayList<>();
    try (InputStream file = Files.newInputStream(Path.of("sheets/lamplighters-quay.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(file)) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING) {
              String where = sheet.getSheetName() + " " + cell.getAddress();
              wrong.addAll(wrong(where, cell.getStringCellValue()));
            }
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void files_page_and_guides_use_them() throws IOException {
    List<String> wrong = new ArrayList<>();
    List<Path> files = new ArrayList<>();
    for (String root : List.of("sheets", "src/main/page", "src/main/resources/org/barsheet")) {
      try (Stream<Path> walk = Files.walk(Path.of(root))) {
        walk.filter(file -> file.toString().matches(".*\\.(csv|vtt|edl|html|css|js|json|otio|svg)"))
            .sorted()
            .forEach(files::add);
      }
    }
    files.add(Path.of("README.md"));
    files.add(Path.of("scores/lamplighters-quay.yaml"));
    for (Path file : files) {
      boolean program = file.toString().matches(".*\\.(js|html)");
      String text = Files.readString(file, UTF_8);
      wrong.addAll(wrong(file.toString(), program ? sentences(text) : text));
    }
    assertThat(wrong).isEmpty();
  }

  /** What a page may show: its texts of more than one word, without the names of its program. */
  private static String sentences(String page) {
    return TEXT.matcher(page.replaceAll("data:[a-z/+]+;base64,[^\"']+", ""))
        .results()
        .map(MatchResult::group)
        .filter(text -> text.contains(" "))
        .collect(Collectors.joining("\n"));
  }

  /**
   * {@code target/messages.txt}: where it is said, the words, and an example from what was said.
   */
  @Test
  void every_message_is_listed() throws IOException {
    List<String> said = examples();
    StringBuilder list = new StringBuilder();
    int listed = 0;
    for (Message message : Messages.all()) {
      if (message.isSaid()) {
        listed++;
        list.append(message.where()).append('\n');
        list.append("  ").append(message.template().replace("\n", " / ")).append('\n');
        example(message, said).ifPresent(line -> list.append("  > ").append(line).append('\n'));
      }
    }
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target/messages.txt"), list);
    assertThat(listed).isGreaterThan(1000);
  }

  private static List<String> examples() throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(Path.of("src/test/resources/org/barsheet"))) {
      for (Path file : walk.filter(each -> each.toString().endsWith(".txt")).sorted().toList()) {
        lines.addAll(Files.readAllLines(file, UTF_8));
      }
    }
    StringWriter checked = new StringWriter();
    PrintWriter writer = new PrintWriter(checked);
    Barsheet.run(writer, writer, "check", "scores/lamplighters-quay.yaml", "--all");
    checked.toString().lines().forEach(lines::add);
    return lines;
  }

  private static Optional<String> example(Message message, List<String> said) {
    if (!message.template().contains(Messages.GAP)) {
      return Optional.empty();
    }
    return said.stream().filter(message::isIn).findFirst().map(String::strip);
  }

  private static List<String> wrong(String where, String text) {
    List<String> wrong = new ArrayList<>();
    INSTEAD.forEach(
        (word, instead) -> {
          boolean sign = word.startsWith("[");
          Pattern pattern =
              Pattern.compile(sign ? word : "(?i)(?<![\\w-])(" + word + ")(?![\\w-])");
          wrong.addAll(found(pattern, where, text, instead));
        });
    return wrong;
  }

  private static List<String> found(Pattern pattern, String where, String text, String instead) {
    List<String> found = new ArrayList<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      int from = Math.max(0, matcher.start() - 40);
      int to = Math.min(text.length(), matcher.end() + 40);
      found.add(where + ": … " + text.substring(from, to) + " …: say " + instead);
    }
    return found;
  }
}
