package org.barsheet.plan.source;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.input.PlainText;
import org.barsheet.input.Problem;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Says in plain words why YAML cannot be read on, shows the line, and how to quote it. */
final class YamlFault {

  private static final Pattern HASH = Pattern.compile("[\\[{,:]\\s*(#[0-9A-Za-z]{3,})");
  private static final Pattern KEY_AND_TEXT =
      Pattern.compile("^\\s*(?:- )*(?<key>[^\\s:'\"\\[{][^:]*):\\s+(?<text>[^'\"\\[{].*)$");
  private static final Pattern APOSTROPHE = Pattern.compile("'(?<text>[^']*'[^\\s,}\\]:#][^']*)'");
  private static final Pattern OPEN_QUOTE =
      Pattern.compile("(?:[:,\\[{]\\s+|^\\s*-\\s+|[\\[{])(?<quote>[\"'])(?:(?!\\k<quote>).)*$");
  private static final Pattern AFTER_QUOTE =
      Pattern.compile("\"(?<text>[^\"]*\"\\s*[^\\s,}\\]:#].*)$");

  private final String file;
  private final String[] lines;
  private final String problem;
  private final int line;
  private final int column;
  private final Optional<Mark> context;

  private YamlFault(String file, String[] lines, MarkedYamlEngineException wrong, Mark mark) {
    this.file = file;
    this.lines = lines;
    this.problem = wrong.getProblem();
    this.line = Math.min(mark.getLine(), lines.length - 1);
    this.column = mark.getColumn();
    this.context = wrong.getContextMark();
  }

  static Problem explain(String file, String[] lines, YamlEngineException wrong) {
    if (wrong instanceof MarkedYamlEngineException marked && marked.getProblemMark().isPresent()) {
      return new YamlFault(file, lines, marked, marked.getProblemMark().get()).explained();
    }
    return Problem.ofFile(file, "the text is not YAML", "check that this is a plan");
  }

  private Problem explained() {
    List<Supplier<Optional<Problem>>> explanations =
        List.of(
            this::tab,
            this::lostHash,
            this::backslash,
            this::openQuote,
            this::quoteOverLines,
            this::apostrophe,
            this::textBehindQuote,
            this::openBracket,
            this::strayBracket,
            this::colon,
            this::firstCharacter,
            this::indentation);
    return explanations.stream()
        .map(Supplier::get)
        .flatMap(Optional::stream)
        .findFirst()
        .orElseGet(
            () ->
                here(
                    "YAML can't be read beyond this point",
                    "put the text in quotes if it contains : # ' [ ] { } or ,"));
  }

  private Optional<Problem> tab() {
    return problem.contains("(TAB)")
        ? Optional.of(here("this line begins with a tab", "use spaces instead"))
        : Optional.empty();
  }

  /** A color without quotes hides the rest of its line, so that a bracket stays open. */
  private Optional<Problem> lostHash() {
    int from = Math.max(0, context.map(Mark::getLine).orElse(line) - 2);
    for (int i = line; i >= from && problem.contains("expected"); i--) {
      Matcher hash = HASH.matcher(lines[i]);
      if (hash.find()) {
        String quoted = lines[i].strip().replaceAll("(?<!\")(#[0-9A-Za-z]{3,})(?!\")", "\"$1\"");
        return Optional.of(
            at(
                i,
                columnOf(i, hash.start(1)),
                "YAML ignores everything after #",
                "quote it: " + shown(quoted)));
      }
    }
    return Optional.empty();
  }

  private Optional<Problem> backslash() {
    if (!problem.contains("escape")) {
      return Optional.empty();
    }
    String rest = context.map(mark -> restOf(mark.getLine(), mark.getColumn() + 1)).orElse("");
    String text = rest.contains("\"") ? rest.substring(0, rest.indexOf('"')) : rest;
    return Optional.of(
        here(
            "\\ means something else inside double quotes",
            "use single quotes: '" + shown(text) + "'"));
  }

  private Optional<Problem> openQuote() {
    boolean open = problem.contains("end of stream") && context.isPresent();
    return open
        ? Optional.of(
            atContext(
                "the quote that opens here is never closed",
                "close it, or put the text in double quotes if it holds an apostrophe"))
        : Optional.empty();
  }

  /** A quote left open ends at the next one, lines below, and what follows there fits nowhere. */
  private Optional<Problem> quoteOverLines() {
    String before = lines[line].substring(0, Math.min(column, lines[line].length()));
    for (int i = line - 1; i >= 0; i--) {
      Matcher open = OPEN_QUOTE.matcher(lines[i]);
      if (open.find() && before.contains(open.group("quote"))) {
        return Optional.of(
            at(
                i,
                columnOf(i, open.start("quote")),
                "the quote that opens here is not closed on its line",
                "close it: " + shown(lines[i].strip() + open.group("quote"))));
      }
    }
    return Optional.empty();
  }

  private Optional<Problem> apostrophe() {
    Matcher text = APOSTROPHE.matcher(lines[line]);
    return problem.contains("<scalar>") && text.find()
        ? Optional.of(
            here(
                "an apostrophe ends this text for YAML",
                "put it in double quotes: \"" + shown(text.group("text")) + "\""))
        : Optional.empty();
  }

  private Optional<Problem> textBehindQuote() {
    Matcher text = AFTER_QUOTE.matcher(lines[line]);
    if (!problem.contains("<scalar>") || !text.find()) {
      return Optional.empty();
    }
    String whole = text.group("text").strip().replaceAll("\"$", "");
    return Optional.of(
        here(
            "there is text after a closing quote",
            "put the whole text in quotes: '" + shown(whole.replace("'", "''")) + "'"));
  }

  private Optional<Problem> openBracket() {
    boolean inFlow = problem.contains("expected ',' or");
    boolean laterLine = context.isPresent() && context.get().getLine() < line;
    if (inFlow && (laterLine || problem.contains("stream end"))) {
      String bracket = problem.contains("']'") ? "[" : "{";
      return Optional.of(
          atContext("the " + bracket + " that opens here is never closed", "close it"));
    }
    return Optional.empty();
  }

  private Optional<Problem> strayBracket() {
    if (problem.contains("stream end")) {
      return Optional.of(
          here("the file ends before a { or [ is closed", "check that nothing is missing here"));
    }
    String got = problem.substring(problem.length() - 1);
    boolean bracket = problem.contains("expected ',' or") && "[]{}".contains(got);
    return bracket
        ? Optional.of(
            here(
                "a " + got + " here opens or closes nothing",
                "put the text in quotes if the " + got + " belongs to it"))
        : Optional.empty();
  }

  private Optional<Problem> colon() {
    boolean inFlow = problem.contains("expected ',' or") && problem.endsWith(":");
    if (!problem.contains("mapping values") && !inFlow) {
      return Optional.empty();
    }
    String whole = inFlow ? flowPart() : lines[line];
    Matcher parts = KEY_AND_TEXT.matcher(whole);
    if (parts.matches() && parts.group("text").matches(".*:(?:\\s.*)?")) {
      String quoted = parts.group("key") + ": \"" + quotedText(parts.group("text")) + "\"";
      return Optional.of(
          here("there is a colon in text without quotes", "quote the text: " + shown(quoted)));
    }
    return Optional.empty();
  }

  /** The part between commas or braces that a place in the line belongs to. */
  private String flowPart() {
    String text = lines[line];
    int at = offset(line, column);
    int from = Math.max(text.lastIndexOf('{', at), text.lastIndexOf(',', at)) + 1;
    int to = at;
    while (to < text.length() && ",}".indexOf(text.charAt(to)) < 0) {
      to++;
    }
    return text.substring(Math.min(from, to), to);
  }

  private static String quotedText(String text) {
    int comment = text.indexOf(" #");
    String alone = comment < 0 ? text : text.substring(0, comment);
    return alone.strip().replace("\"", "\\\"");
  }

  private Optional<Problem> firstCharacter() {
    boolean bad =
        problem.contains("cannot start any token")
            || problem.contains("expected the node content")
            || problem.contains("chomping")
            || problem.contains("comment or a line break")
            || problem.contains("unexpected character found")
            || problem.contains("sequence entries")
            || problem.contains("mapping keys");
    if (!bad) {
      return Optional.empty();
    }
    int start = context.filter(mark -> mark.getLine() == line).map(Mark::getColumn).orElse(column);
    String text = restOf(line, start);
    if (text.isBlank()) {
      return Optional.empty();
    }
    return Optional.of(
        at(
            line,
            start,
            "a text cannot begin with " + text.charAt(0) + " in YAML",
            "quote it: \"" + shown(quotedText(text)) + "\""));
  }

  private Optional<Problem> indentation() {
    if (problem.contains("expected ':'")) {
      String remedy = "write key: value, with a space after the colon";
      return Optional.of(atContext("this key has no colon", remedy));
    }
    boolean found = problem.contains("block end") || problem.contains("mapping values");
    return found
        ? Optional.of(
            here(
                "this line does not fit the lines above it",
                "begin the keys of one section in the same column, with spaces"))
        : Optional.empty();
  }

  private Problem here(String sentence, String remedy) {
    return at(line, column, sentence, remedy);
  }

  private Problem atContext(String sentence, String remedy) {
    Mark mark = context.orElseThrow();
    return at(Math.min(mark.getLine(), lines.length - 1), mark.getColumn(), sentence, remedy);
  }

  private Problem at(int line, int column, String sentence, String remedy) {
    List<String> excerpt = LineExcerpt.of(lines[line], offset(line, column));
    return new Problem(file, YamlSource.position(line + 1, column + 1), sentence, remedy, excerpt);
  }

  private String restOf(int line, int column) {
    return lines[line].substring(offset(line, column));
  }

  private int offset(int line, int column) {
    String text = lines[line];
    return text.offsetByCodePoints(0, Math.min(column, text.codePointCount(0, text.length())));
  }

  private int columnOf(int line, int offset) {
    return lines[line].codePointCount(0, offset);
  }

  private static String shown(String text) {
    return PlainText.shortened(text, 70);
  }
}
