package org.barsheet.plan.source;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.barsheet.plan.PlanNote;

/** What is collected while one plan is read. */
public final class PlanReading {

  private final Path file;
  private final Problems problems = new Problems();
  private final Set<String> given = new TreeSet<>();
  private final Set<Path> files = new LinkedHashSet<>();
  private Optional<Path> table = Optional.empty();
  private final List<PlanNote> notes = new ArrayList<>();

  public PlanReading(Path file) {
    this.file = file;
  }

  /** The plan's file, as the person named it. */
  public Path file() {
    return file;
  }

  public Problems problems() {
    return problems;
  }

  /** Settings stated so far, as dotted paths. */
  public Set<String> given() {
    return given;
  }

  public List<PlanNote> notes() {
    return notes;
  }

  /** A file the plan names, seen from the plan's folder. */
  public Path resolve(Path named) {
    Path resolved = file.resolveSibling(named);
    if (!named.toString().isEmpty()) {
      files.add(resolved);
    }
    return resolved;
  }

  /** The panels' own file, seen from the plan's folder. */
  public Path resolveTable(Path named) {
    Path resolved = resolve(named);
    table = Optional.of(resolved);
    return resolved;
  }

  public Optional<Path> table() {
    return table;
  }

  /** Every file the plan named so far, in that order. */
  public Set<Path> files() {
    return files;
  }
}
