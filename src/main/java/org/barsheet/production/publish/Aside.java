package org.barsheet.production.publish;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * Where files wait that are not published yet, and those before them until all of the new ones are:
 * in the hidden folder {@code .barsheet} of the folder they belong to, so on the same disk.
 *
 * @param folder that files are published into
 */
record Aside(Path folder) {

  Path root() {
    return folder.resolve(".barsheet");
  }

  Path allFresh() {
    return root().resolve("new");
  }

  Path allBefore() {
    return root().resolve("old");
  }

  /** Where a file waits to be published. */
  Path fresh(String name) {
    return allFresh().resolve(name);
  }

  /** Where the file that a new one replaces is kept meanwhile. */
  Path before(String name) {
    return allBefore().resolve(name);
  }

  Path journal() {
    return root().resolve("journal.json");
  }

  Path unfinishedJournal() {
    return root().resolve("journal.json.part");
  }

  /** Whether the hidden folder is there; a link in its place is none. */
  boolean exists() {
    return Files.isDirectory(root(), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Makes sure that nothing of somebody else's has the hidden folder's name.
   *
   * @throws InputException if something has
   */
  void check() {
    if (!exists() && Files.exists(root(), LinkOption.NOFOLLOW_LINKS)) {
      throw inTheWay(root());
    }
  }

  /** What to tell where a hidden name of ours is taken by something else. */
  static InputException inTheWay(Path taken) {
    return new InputException(
        Problem.ofFile(
            taken.toString(),
            "barsheet needs this name while it writes",
            "move it, or name another folder with --out"));
  }
}
