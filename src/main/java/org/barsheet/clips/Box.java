package org.barsheet.clips;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A box of a file of boxes (ISO/IEC 14496-12, 4.2): its length, four letters that name it, its
 * content.
 *
 * @param name four letters
 * @param body where its content begins
 * @param end where it ends
 */
record Box(String name, long body, long end) {

  private static final int HEAD = 8;
  private static final int LONG_HEAD = 16;

  /** Boxes beside one another that are looked at; a recording has a few dozen. */
  static final int MOST_BOXES = 2_000;

  /** The boxes between two places, one after another. */
  static List<Box> between(ClipBytes bytes, long from, long to)
      throws IOException, UnreadableClipException {
    List<Box> boxes = new ArrayList<>();
    long place = from;
    while (place + HEAD <= to && boxes.size() < MOST_BOXES) {
      Box box = first(bytes, place, to);
      boxes.add(box);
      place = box.end();
    }
    return boxes;
  }

  /** The box that begins at a place. */
  static Box first(ClipBytes bytes, long place, long to)
      throws IOException, UnreadableClipException {
    long length = bytes.unsigned32(place);
    String name = bytes.fourLetters(place + 4);
    int head = HEAD;
    if (length == 1) {
      length = bytes.positive64(place + HEAD);
      head = LONG_HEAD;
    } else if (length == 0) {
      length = to - place;
    }
    if (length < head || length > to - place) {
      throw new UnreadableClipException("is cut short or damaged");
    }
    return new Box(name, place + head, place + length);
  }

  /** The first box of a name inside this one. */
  Optional<Box> child(ClipBytes bytes, String wanted) throws IOException, UnreadableClipException {
    return between(bytes, body, end).stream().filter(b -> b.name().equals(wanted)).findFirst();
  }

  /** The first box at the end of a path of names. */
  Optional<Box> descendant(ClipBytes bytes, String... path)
      throws IOException, UnreadableClipException {
    Optional<Box> found = Optional.of(this);
    for (String name : path) {
      if (found.isPresent()) {
        found = found.get().child(bytes, name);
      }
    }
    return found;
  }
}
