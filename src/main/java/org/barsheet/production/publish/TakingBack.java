package org.barsheet.production.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.barsheet.production.publish.Journal.Entry;

/**
 * Takes back what was published in part. It may be cut short itself, and begun again. A new file
 * that somebody has changed since is theirs: it stays, and the one before is kept beside it.
 */
final class TakingBack {

  private final Aside aside;
  private final Disk disk;

  TakingBack(Aside aside, Disk disk) {
    this.aside = aside;
    this.disk = disk;
  }

  void run(Journal journal) throws IOException {
    Set<Path> folders = new LinkedHashSet<>();
    for (Entry entry : journal.files()) {
      Path place = aside.folder().resolve(entry.name());
      // A file that still waits was not moved, so its place is as it was.
      boolean moved = !Files.exists(aside.fresh(entry.name()), LinkOption.NOFOLLOW_LINKS);
      if (moved && entry.replaces()) {
        putBack(entry, place);
      } else if (moved && exists(place) && entry.isAsWritten(place)) {
        disk.delete(place);
      }
      folders.add(place.resolveSibling(".").normalize());
    }
    List<String> made = new ArrayList<>(journal.folders());
    Collections.reverse(made);
    for (String folder : made) {
      disk.deleteIfEmpty(aside.folder().resolve(folder));
    }
    for (Path folder : folders) {
      disk.settleNames(folder);
    }
    disk.settleNames(aside.folder());
    disk.delete(aside.journal());
    disk.settleNames(aside.root());
  }

  private void putBack(Entry entry, Path place) throws IOException {
    Path before = aside.before(entry.name());
    if (!exists(before)) {
      return;
    }
    if (exists(place) && !entry.isAsWritten(place)) {
      disk.add(before, KeptName.beside(place));
    } else {
      disk.replace(before, place);
    }
  }

  private static boolean exists(Path file) {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }
}
