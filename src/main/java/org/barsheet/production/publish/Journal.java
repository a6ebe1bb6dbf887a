package org.barsheet.production.publish;

import com.google.gson.Gson;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * What is being published. While the journal is there, the files before count: each that is
 * replaced has its second name in {@link Aside#before}. When it goes, the new files count.
 *
 * @param folders made for the new files, outer ones first, by their paths within the folder
 * @param files every file that is put in its place
 */
record Journal(List<String> folders, List<Entry> files) {

  private static final String FORMAT = "barsheet publishing 1";

  Journal {
    folders = List.copyOf(folders);
    files = List.copyOf(files);
  }

  /**
   * A file that is put in its place.
   *
   * @param name its path within the folder
   * @param replaces whether something stood there before
   * @param bytes size of the new file
   * @param saved when the new file was written, as {@link java.nio.file.attribute.FileTime} spells
   *     it
   */
  record Entry(String name, boolean replaces, long bytes, String saved) {

    static Entry of(String name, boolean replaces, Path fresh) throws IOException {
      BasicFileAttributes found = attributes(fresh);
      return new Entry(name, replaces, found.size(), found.lastModifiedTime().toString());
    }

    /** Whether the file that stands in the place is the new one, as it was written. */
    boolean isAsWritten(Path place) throws IOException {
      BasicFileAttributes found = attributes(place);
      return found.size() == bytes && found.lastModifiedTime().toString().equals(saved);
    }

    private static BasicFileAttributes attributes(Path file) throws IOException {
      return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    }
  }

  private record Written(String format, List<String> folders, List<Entry> files) {}

  byte[] toJson() {
    return new Gson().toJson(new Written(FORMAT, folders, files)).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * The journal of a folder, where one is there.
   *
   * @throws InputException if it is damaged or names a place outside the folder
   */
  static Optional<Journal> read(Aside aside) throws IOException {
    if (!aside.exists()) {
      return Optional.empty();
    }
    try {
      return Optional.of(parse(aside, Files.readString(aside.journal(), StandardCharsets.UTF_8)));
    } catch (NoSuchFileException nothingUnderWay) {
      return Optional.empty();
    }
  }

  private static Journal parse(Aside aside, String text) {
    try {
      JsonObject object = JsonParser.parseString(text).getAsJsonObject();
      Journal journal = new Gson().fromJson(object, Journal.class);
      boolean ours =
          object.has("format")
              && FORMAT.equals(object.get("format").getAsString())
              && journal.folders().stream().allMatch(name -> isInside(aside, name))
              && journal.files().stream().allMatch(file -> isInside(aside, file.name()));
      if (ours) {
        return journal;
      }
    } catch (RuntimeException broken) {
      // Whatever the library met in it, it is no journal: told below.
    }
    throw new InputException(
        Problem.ofFile(
            aside.journal().toString(),
            "an earlier run was cut short, and its list of files is damaged",
            "take what you need from the folder old beside it, delete "
                + aside.root()
                + ", and make again"));
  }

  private static boolean isInside(Aside aside, String name) {
    Path root = aside.folder().toAbsolutePath().normalize();
    Path place = root.resolve(name);
    return place.equals(place.normalize())
        && place.startsWith(root)
        && !place.equals(root)
        && !place.startsWith(root.resolve(aside.root().getFileName()));
  }
}
