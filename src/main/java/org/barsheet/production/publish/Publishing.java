package org.barsheet.production.publish;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.barsheet.input.InputException;
import org.barsheet.production.publish.Journal.Entry;

/**
 * Puts files that wait into their places, in one act: first every file that is to be replaced gets
 * a second name, then the journal appears, the new files take their places, and the journal goes.
 * At each of these steps the changes of the one before have reached the disk.
 */
final class Publishing {

  private final Aside aside;
  private final Disk disk;

  Publishing(Aside aside, Disk disk) {
    this.aside = aside;
    this.disk = disk;
  }

  /**
   * Publishes files.
   *
   * @param names of files that wait
   * @return the names of those that went to their places: a place that was free when all began and
   *     was taken meanwhile keeps what came there, if {@code mayStayAway}
   * @throws InputException if one of them cannot go there; then none does
   */
  List<String> publish(List<String> names, Set<String> mayStayAway) throws IOException {
    Journal journal = prepared(names);
    write(journal);
    List<String> published = new ArrayList<>();
    Path underWay = aside.folder();
    try {
      for (String folder : journal.folders()) {
        underWay = aside.folder().resolve(folder);
        disk.makeFolder(underWay);
      }
      for (Entry entry : journal.files()) {
        underWay = aside.folder().resolve(entry.name());
        if (moved(entry, underWay, mayStayAway.contains(entry.name()))) {
          published.add(entry.name());
        }
      }
      settle(journal);
    } catch (IOException refused) {
      new TakingBack(aside, disk).run(journal);
      throw new InputException(
          Files.exists(underWay, LinkOption.NOFOLLOW_LINKS)
              ? Refused.replacing(underWay, refused)
              : Refused.file(underWay, refused));
    }
    disk.delete(aside.journal());
    disk.settleNames(aside.root());
    return published;
  }

  private Journal prepared(List<String> names) throws IOException {
    Set<Path> folders = new LinkedHashSet<>();
    List<Entry> entries = new ArrayList<>();
    for (String name : names) {
      addMissingFolders(name, folders);
      boolean replaces = Files.exists(aside.folder().resolve(name), LinkOption.NOFOLLOW_LINKS);
      if (replaces) {
        keep(name);
      }
      entries.add(Entry.of(name, replaces, aside.fresh(name)));
    }
    return new Journal(folders.stream().map(this::spelled).toList(), entries);
  }

  private void addMissingFolders(String name, Set<Path> folders) {
    Path place = aside.folder();
    for (Path part : place.getFileSystem().getPath(name)) {
      if (!Files.exists(place)) {
        folders.add(aside.folder().relativize(place));
      }
      place = place.resolve(part);
    }
  }

  private String spelled(Path inside) {
    return inside.toString().replace('\\', '/');
  }

  private void keep(String name) throws IOException {
    Path second = aside.before(name);
    makeFolders(second.resolveSibling("."));
    disk.keep(aside.folder().resolve(name), second);
  }

  private void makeFolders(Path inside) throws IOException {
    Path place = inside.normalize();
    if (!Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
      Path above = place.getParent();
      if (above != null) {
        makeFolders(above);
      }
      disk.makeFolder(place);
    }
  }

  private void write(Journal journal) throws IOException {
    for (Path folder : folders(journal, aside.allBefore())) {
      disk.settleNames(folder);
    }
    for (Path folder : folders(journal, aside.allFresh())) {
      disk.settleNames(folder);
    }
    try (FileChannel file = disk.create(aside.unfinishedJournal());
        OutputStream out = Channels.newOutputStream(file)) {
      out.write(journal.toJson());
      disk.settle(file);
    }
    disk.settleNames(aside.root());
    disk.settleNames(aside.folder());
    disk.replace(aside.unfinishedJournal(), aside.journal());
    disk.settleNames(aside.root());
  }

  private boolean moved(Entry entry, Path place, boolean mayStayAway) throws IOException {
    if (entry.replaces()) {
      disk.replace(aside.fresh(entry.name()), place);
      return true;
    }
    try {
      disk.add(aside.fresh(entry.name()), place);
      return true;
    } catch (FileAlreadyExistsException taken) {
      if (mayStayAway) {
        return false;
      }
      throw taken;
    }
  }

  private void settle(Journal journal) throws IOException {
    for (Path folder : folders(journal, aside.folder())) {
      disk.settleNames(folder);
    }
  }

  /** The folders that files of a journal lie in, below one that is laid out like the sheets'. */
  private static Set<Path> folders(Journal journal, Path below) {
    Set<Path> folders = new LinkedHashSet<>();
    folders.add(below);
    journal
        .files()
        .forEach(entry -> folders.add(below.resolve(entry.name()).resolveSibling(".").normalize()));
    return folders;
  }
}
