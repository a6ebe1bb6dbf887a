package org.barsheet.cli;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Every text in the program's sources that a person may read, put together where it is parted. */
final class Messages {

  static final String GAP = "…";

  private static final Path SOURCES = Path.of("src", "main", "java");

  /** What only the next programmer can come to see. */
  private static final Pattern INTERNAL =
      Pattern.compile("Illegal(Argument|State)Exception|AssertionError|NullPointerException");

  private Messages() {}

  /**
   * A text with gaps where values go.
   *
   * @param where the source file and line that say it
   * @param template the text, {@link #GAP} for each value
   */
  record Message(String where, String template) {

    /** Whether a line holds its words in order, with something in each gap between them. */
    boolean isIn(String line) {
      int from = 0;
      for (String words : template.split(GAP + "+", -1)) {
        int at = line.indexOf(words, from);
        if (at < 0) {
          return false;
        }
        from = at + words.length() + 1;
      }
      return from <= line.length() + 1;
    }

    /** Whether it is a sentence or a part of one, not a name or a key. */
    boolean isSaid() {
      return template.replace(GAP, "").strip().contains(" ")
          && template.chars().anyMatch(Character::isLetter)
          && !template.contains("</")
          && !template.contains("{ ");
    }
  }

  static List<Message> all() throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
    List<Path> sources;
    try (Stream<Path> walk = Files.walk(SOURCES)) {
      sources = walk.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
    JavacTask task =
        (JavacTask)
            compiler.getTask(
                null,
                files,
                null,
                List.of("-proc:none"),
                null,
                files.getJavaFileObjectsFromPaths(sources));
    SourcePositions positions = Trees.instance(task).getSourcePositions();
    List<Message> found = new ArrayList<>();
    for (CompilationUnitTree unit : task.parse()) {
      unit.accept(new Reader(unit, positions, found), null);
    }
    return found;
  }

  /** Gathers the texts of one source file. */
  private static final class Reader extends TreeScanner<Void, Void> {

    private final CompilationUnitTree unit;
    private final SourcePositions positions;
    private final List<Message> found;

    Reader(CompilationUnitTree unit, SourcePositions positions, List<Message> found) {
      this.unit = unit;
      this.positions = positions;
      this.found = found;
    }

    @Override
    public Void visitNewClass(NewClassTree made, Void nothing) {
      boolean internal = INTERNAL.matcher(made.getIdentifier().toString()).find();
      return internal ? null : super.visitNewClass(made, null);
    }

    @Override
    public Void visitLiteral(LiteralTree literal, Void nothing) {
      if (literal.getValue() instanceof String) {
        add(literal, List.of(literal));
      }
      return null;
    }

    @Override
    public Void visitBinary(BinaryTree binary, Void nothing) {
      List<Tree> parts = parts(binary);
      if (parts.stream().noneMatch(Reader::isText)) {
        return super.visitBinary(binary, null);
      }
      add(binary, parts);
      parts.stream().filter(part -> !isText(part)).forEach(part -> scan(part, null));
      return null;
    }

    private static List<Tree> parts(Tree tree) {
      if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
        List<Tree> parts = new ArrayList<>(parts(sum.getLeftOperand()));
        parts.addAll(parts(sum.getRightOperand()));
        return parts;
      }
      return tree instanceof ParenthesizedTree inner && isText(inner.getExpression())
          ? List.of(inner.getExpression())
          : List.of(tree);
    }

    private static boolean isText(Tree tree) {
      return tree instanceof LiteralTree literal && literal.getValue() instanceof String;
    }

    private void add(Tree at, List<Tree> parts) {
      String template =
          parts.stream()
              .map(part -> isText(part) ? (String) ((LiteralTree) part).getValue() : GAP)
              .collect(Collectors.joining());
      long line = unit.getLineMap().getLineNumber(positions.getStartPosition(unit, at));
      String file =
          SOURCES
              .resolve("org/barsheet")
              .toUri()
              .relativize(unit.getSourceFile().toUri())
              .getPath();
      found.add(new Message(file + ":" + line, template));
    }
  }
}
