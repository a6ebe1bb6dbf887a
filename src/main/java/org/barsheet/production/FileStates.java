package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How files lie on the disk at one moment. Looking is sturdier than being told by the system: it
 * sees files that an editor replaces, that are not there for a moment, or that lie on a network. A
 * folder counts as not there: what is written beside the files is not theirs.
 */
final class FileStates {

  /**
   * A file as it lies there.
   *
   * @param saved when it was written last
   * @param bytes its size
   * @param key what the system knows it by, "" where it has no such thing: another one after an
   *     editor has put a new file in its place
   */
  private record State(FileTime saved, long bytes, String key) {}

  private final Map<Path, Optional<State>> states = new LinkedHashMap<>();

  /** Looks at the files that were not looked at yet. */
  FileStates look(Collection<Path> files) {
    files.forEach(file -> states.computeIfAbsent(file, FileStates::state));
    return this;
  }

  /** The same files as they lie now. */
  FileStates again() {
    return new FileStates().look(states.keySet());
  }

  private static Optional<State> state(Path file) {
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      if (found.isDirectory()) {
        return Optional.empty();
      }
      String key = String.valueOf(found.fileKey());
      return Optional.of(new State(found.lastModifiedTime(), found.size(), key));
    } catch (IOException notThere) {
      return Optional.empty();
    }
  }

  /** Whether one of some files is there and has nothing in it yet. */
  boolean isAnyEmpty(Collection<Path> files) {
    return files.stream()
        .flatMap(file -> states.getOrDefault(file, Optional.empty()).stream())
        .anyMatch(state -> state.bytes() == 0);
  }

  /** The files that lie otherwise than they did, in the order looked at. */
  Set<Path> changedSince(FileStates earlier) {
    Set<Path> changed = new LinkedHashSet<>();
    states.forEach(
        (file, state) -> {
          if (!state.equals(earlier.states.get(file))) {
            changed.add(file);
          }
        });
    return changed;
  }
}
