package org.barsheet.review;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.timing.Shot;

/** The panels' drawings as data addresses, each stored once, however many panels show it. */
final class PageDrawings {

  private final Map<Path, Integer> indexes;
  private final List<String> addresses;

  private PageDrawings(Map<Path, Integer> indexes, List<String> addresses) {
    this.indexes = indexes;
    this.addresses = addresses;
  }

  /** The drawings of all shots; a file that cannot be shown is left out, and the shot says so. */
  static PageDrawings of(List<Shot> shots) {
    List<Path> files =
        shots.stream().flatMap(shot -> shot.panel().drawing().stream()).distinct().toList();
    Map<Path, Integer> indexes = new LinkedHashMap<>();
    List<String> addresses = new ArrayList<>();
    for (Path file : files) {
      read(file, files.size())
          .ifPresent(
              drawing -> {
                indexes.put(file, addresses.size());
                addresses.add(address(drawing));
              });
    }
    return new PageDrawings(indexes, addresses);
  }

  private static Optional<PageDrawing> read(Path file, int drawings) {
    try {
      int allowed = PageDrawing.allowedBytes(drawings);
      int share = PageDrawing.shareBytes(drawings);
      return PageDrawing.of(GivenFile.bytes(file, Limit.DRAWING), allowed, share);
    } catch (IOException | InputException unreadable) {
      return Optional.empty();
    }
  }

  private static String address(PageDrawing drawing) {
    return "data:"
        + drawing.mediaType()
        + ";base64,"
        + Base64.getEncoder().encodeToString(drawing.bytes());
  }

  Optional<Integer> indexOf(Shot shot) {
    return shot.panel().drawing().flatMap(this::indexOf);
  }

  Optional<Integer> indexOf(Path file) {
    return Optional.ofNullable(indexes.get(file));
  }

  /** What to do about a drawing that the page cannot show, if the shot has such a one. */
  Optional<String> leftOut(Shot shot) {
    return shot.panel()
        .drawing()
        .filter(file -> !indexes.containsKey(file))
        .map(
            file ->
                file.getFileName()
                    + " is too large or can't be shown here: save it as a smaller PNG or JPEG");
  }

  List<String> addresses() {
    return List.copyOf(addresses);
  }
}
