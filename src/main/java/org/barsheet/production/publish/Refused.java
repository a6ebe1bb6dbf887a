package org.barsheet.production.publish;

import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import org.barsheet.input.Problem;

/** What to tell a person whose file or folder could not be written. */
final class Refused {

  private static final String OTHER_FOLDER = "name another folder with --out";

  private Refused() {}

  static Problem folder(Path folder, Exception refused) {
    String name = folder.toString();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      return Problem.ofFile(name, "a file already has this folder's name", OTHER_FOLDER);
    }
    if (refused instanceof AccessDeniedException
        || refused instanceof ReadOnlyFileSystemException
        || (Files.isDirectory(folder) && !Files.isWritable(folder))) {
      return Problem.ofFile(name, "you're not allowed to write into this folder", OTHER_FOLDER);
    }
    return Problem.ofFile(
        name,
        "this folder can't be written (" + refused.getMessage() + ")",
        "check that the disk has room, or " + OTHER_FOLDER);
  }

  static Problem folderInUse(Path folder) {
    return Problem.ofFile(
        folder.toString(),
        "another barsheet is writing into this folder",
        "wait until it's done, or " + OTHER_FOLDER);
  }

  /** Something else has the name of a folder for some of the files. */
  static Problem noFolder(Path inTheWay) {
    return Files.isSymbolicLink(inTheWay)
        ? Problem.ofFile(
            inTheWay.toString(),
            "a link already has this folder's name",
            "move that link away, or " + OTHER_FOLDER)
        : Problem.ofFile(
            inTheWay.toString(),
            "a file already has this folder's name",
            "move that file away, or " + OTHER_FOLDER);
  }

  static Problem file(Path file, Exception refused) {
    String name = file.toString();
    if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
      return Problem.ofFile(
          name, "a folder already has this name", "move the folder, or choose another");
    }
    if (refused instanceof NoSuchFileException) {
      return Problem.ofFile(name, "the folder for this file doesn't exist", "make the folder");
    }
    if (refused instanceof AccessDeniedException
        || refused instanceof ReadOnlyFileSystemException) {
      return Problem.ofFile(
          name,
          "you're not allowed to write this file",
          "choose a folder you're allowed to write into");
    }
    return Problem.ofFile(
        name,
        "this file cannot be written (" + refused.getMessage() + ")",
        "check that the disk has room and the folder can be written");
  }

  /** A file that stands there cannot make way for a new one. */
  static Problem replacing(Path file, Exception refused) {
    return Problem.ofFile(
        file.toString(),
        "this file cannot be replaced (" + refused.getMessage() + ")",
        "close it in other programs and unlock it, or " + OTHER_FOLDER);
  }

  /** A file cannot get back to where it was before a make that was cut short. */
  static Problem puttingBack(Path folder, Exception refused) {
    return Problem.ofFile(
        folder.toString(),
        "an earlier run was cut short here, and a file cannot be put back ("
            + refused.getMessage()
            + ")",
        "close the folder's files in other programs, and make again");
  }
}
