package org.barsheet.production.publish;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * A folder that files are written into: all of them or none, whenever the program or the computer
 * stops. Every file is first written into a hidden folder beside its place; {@link #publish} moves
 * all of them into their places in one act. What an act that was cut short left behind is taken
 * back when the folder is opened next. One program at a time may hold the folder.
 */
public final class OutputFolder implements AutoCloseable {

  private final Aside aside;
  private final Disk disk;
  private final FolderLock lock;
  private final List<Path> made;

  /** Names of files that wait, and whether each may go to its place, whatever stands there. */
  private final Map<String, Optional<Predicate<Path>>> waiting = new LinkedHashMap<>();

  private OutputFolder(Aside aside, Disk disk, FolderLock lock, List<Path> made) {
    this.aside = aside;
    this.disk = disk;
    this.lock = lock;
    this.made = made;
  }

  /**
   * Opens a folder, making it if need be.
   *
   * @throws InputException if it cannot be written into or another program is writing into it
   */
  public static OutputFolder open(Path folder) {
    return open(folder, new Disk());
  }

  /** The same with a disk that a test watches. */
  public static OutputFolder open(Path folder, Disk disk) {
    List<Path> made = new ArrayList<>();
    try {
      make(folder, made, disk);
      return opened(folder, made, disk);
    } catch (InputException | IOException | ReadOnlyFileSystemException refused) {
      unmake(made, disk);
      throw refused instanceof InputException told
          ? told
          : new InputException(Refused.folder(folder, refused));
    }
  }

  private static OutputFolder opened(Path folder, List<Path> made, Disk disk) throws IOException {
    Aside aside = new Aside(folder);
    FolderLock lock =
        FolderLock.take(folder, disk)
            .orElseThrow(() -> new InputException(Refused.folderInUse(folder)));
    boolean ready = false;
    try {
      aside.check();
      takeBack(aside, disk);
      ready = true;
      return new OutputFolder(aside, disk, lock, made);
    } finally {
      if (!ready) {
        lock.close();
      }
    }
  }

  /** Takes back what an act that was cut short left behind. */
  private static void takeBack(Aside aside, Disk disk) throws IOException {
    Optional<Journal> underWay = Journal.read(aside);
    try {
      if (underWay.isPresent()) {
        new TakingBack(aside, disk).run(underWay.get());
      }
      clear(aside, disk);
    } catch (IOException refused) {
      throw new InputException(Refused.puttingBack(aside.folder(), refused));
    }
  }

  /** Removes what is set aside, unless files before are among it that still count. */
  private static void clear(Aside aside, Disk disk) throws IOException {
    if (aside.exists() && !Files.exists(aside.journal(), LinkOption.NOFOLLOW_LINKS)) {
      disk.deleteWhole(aside.allFresh());
      disk.deleteWhole(aside.allBefore());
      disk.delete(aside.unfinishedJournal());
      disk.deleteIfEmpty(aside.root());
    }
  }

  /** Makes a folder with those above it; outer ones are made first. */
  private static void make(Path folder, List<Path> made, Disk disk) throws IOException {
    Path place = folder.toAbsolutePath();
    if (!Files.isDirectory(place)) {
      Path above = place.getParent();
      if (above != null) {
        make(above, made, disk);
      }
      disk.makeFolder(place);
      made.add(place);
    }
  }

  private static void unmake(List<Path> made, Disk disk) {
    try {
      for (int inner = made.size() - 1; inner >= 0; inner--) {
        disk.deleteIfEmpty(made.get(inner));
      }
    } catch (IOException stays) {
      // An empty folder does no harm.
    }
  }

  /**
   * Writes one file, to be published.
   *
   * @param name its path within the folder, {@code calls/cello.html}
   */
  public void write(String name, HandoffFile.Content content) {
    write(name, content, Optional.empty());
  }

  /**
   * Writes one file for a place that may be somebody else's by the time it is to go there.
   *
   * @param name its path within the folder
   * @param mayStandAt asked once more before the file is published; where it says no, what stands
   *     there stays
   */
  public void write(String name, HandoffFile.Content content, Predicate<Path> mayStandAt) {
    write(name, content, Optional.of(mayStandAt));
  }

  private void write(
      String name, HandoffFile.Content content, Optional<Predicate<Path>> mayStandAt) {
    Readiness.noFolder(folder(), name)
        .ifPresent(
            inTheWay -> {
              throw new InputException(Refused.noFolder(inTheWay));
            });
    Path fresh = aside.fresh(name);
    try {
      makeFolders(fresh.resolveSibling(".").normalize());
      if (waiting.put(name, mayStandAt) != null) {
        disk.delete(fresh);
      }
      try (FileChannel file = disk.create(fresh)) {
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(file), 1 << 16);
        content.writeTo(out);
        out.flush();
        disk.settle(file);
      }
    } catch (IOException | UncheckedIOException refused) {
      throw new InputException(Refused.file(folder().resolve(name), refused));
    }
  }

  /** Writes a file that stands ready by itself, as another program makes it. */
  @FunctionalInterface
  public interface Making {

    /**
     * Makes all of the file.
     *
     * @param file is there and empty
     * @throws IOException if it cannot be made
     */
    void make(Path file) throws IOException;
  }

  /**
   * Has one file made, to be published.
   *
   * @param name its path within the folder
   */
  public void make(String name, Making making) {
    write(name, out -> {});
    Path fresh = aside.fresh(name);
    try {
      making.make(fresh);
      try (FileChannel file = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
        disk.settle(file);
      }
    } catch (IOException | UncheckedIOException refused) {
      throw new InputException(Refused.file(folder().resolve(name), refused));
    }
  }

  /**
   * Writes a file that is only needed meanwhile, beside those that wait: it goes when the folder is
   * let go.
   *
   * @param name a name that no file of the folder has
   * @return where it is
   */
  public Path meanwhile(String name, HandoffFile.Content content) {
    write(name, content);
    waiting.remove(name);
    return aside.fresh(name);
  }

  /** Folders within the hidden one; outer ones first. */
  private void makeFolders(Path inside) throws IOException {
    if (!Files.isDirectory(inside, LinkOption.NOFOLLOW_LINKS)) {
      Path above = inside.getParent();
      if (above != null && !inside.equals(aside.root())) {
        makeFolders(above);
      }
      disk.makeFolder(inside);
    }
  }

  public Path folder() {
    return aside.folder();
  }

  /**
   * Moves every file written so far into its place, in one act.
   *
   * @return the files that went there, in the order written
   * @throws InputException if one of them cannot go there; then none does
   */
  public List<Path> publish() {
    List<String> names =
        waiting.entrySet().stream()
            .filter(file -> file.getValue().stream().allMatch(may -> may.test(place(file))))
            .map(Map.Entry::getKey)
            .toList();
    List<Problem> problems =
        names.stream().flatMap(name -> Readiness.problem(folder(), name).stream()).toList();
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    Set<String> mayStayAway =
        names.stream()
            .filter(name -> waiting.getOrDefault(name, Optional.empty()).isPresent())
            .collect(Collectors.toSet());
    try {
      List<String> published = new Publishing(aside, disk).publish(names, mayStayAway);
      waiting.clear();
      return published.stream().map(folder()::resolve).toList();
    } catch (IOException refused) {
      throw new InputException(Refused.folder(folder(), refused));
    }
  }

  private Path place(Map.Entry<String, ?> file) {
    return folder().resolve(file.getKey());
  }

  /** Removes what was not published, with the folders made for it, and lets the folder go. */
  @Override
  public void close() {
    try (lock) {
      clear(aside, disk);
    } catch (IOException refused) {
      throw new InputException(Refused.folder(folder(), refused));
    }
    unmake(made, disk);
  }
}
