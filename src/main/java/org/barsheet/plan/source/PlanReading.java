package org.barsheet.plan.source;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.barsheet.input.GivenFile;
import org.barsheet.input.Limit;
import org.barsheet.plan.PlanNote;

/** What is collected while one plan is read. */
public final class PlanReading {

  private final Path file;
  private final Map<Path, byte[]> held;
  private final Problems problems = new Problems();
  private final Set<String> given = new TreeSet<>();
  private final Set<Path> files = new LinkedHashSet<>();
  private Optional<Path> table = Optional.empty();
  private final List<PlanNote> notes = new ArrayList<>();

  public PlanReading(Path file) {
    this(file, Map.of());
  }

  /**
   * Reads a plan that isn't on the disk as it is read.
   *
   * @param held what some of its files hold; the others are read from the disk
   */
  public PlanReading(Path file, Map<Path, byte[]> held) {
    this.file = file;
    this.held = Map.copyOf(held);
  }

  /** What one of the plan's files holds, if it isn't read from the disk. */
  public Optional<byte[]> held(Path of) {
    return Optional.ofNullable(held.get(of));
  }

  /**
   * All of one of the plan's files.
   *
   * @throws org.barsheet.input.InputException if it cannot be read, or is too large
   */
  public byte[] bytes(Path of, Limit limit) {
    return held(of).orElseGet(() -> GivenFile.bytes(of, limit));
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
