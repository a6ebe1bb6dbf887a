package org.barsheet.workbook.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.artwork.Framing;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.plan.Field;
import org.barsheet.plan.Film;
import org.barsheet.plan.Rect;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.pen.SheetWords;

/** What is to know of a shot: its place and length; its plate, its camera and who is seen. */
final class ShotDetails {

  private static final String BETWEEN = "   ";

  private final FilmSheet sheet;
  private final Photographs photographs;

  ShotDetails(FilmSheet sheet) {
    this.sheet = sheet;
    this.photographs = new Photographs(sheet);
  }

  /** Where it begins and how long it is. */
  String length(Shot shot) {
    Film film = sheet.plan().film();
    long frames = shot.frames().length();
    boolean beforeMusic = shot.frames().start() < film.musicStartFrame();
    return (beforeMusic ? "from before the music" : "from " + shot.startsAt())
        + BETWEEN
        + SheetWords.count(frames, "frame")
        + ", "
        + SheetWords.duration(film, frames)
        + BETWEEN
        + "last film frame "
        + (shot.frames().endExclusive() - 1);
  }

  /** All that stays the same from its first frame to its last. */
  String throughout(Shot shot) {
    List<String> words = new ArrayList<>();
    words.add(plate(shot));
    shot.panel().field().map(ShotDetails::camera).ifPresent(words::add);
    String seen =
        shot.panel().appears().stream()
            .map(appears -> appears.performer() + " in " + appears.opening())
            .collect(Collectors.joining(", "));
    if (!seen.isEmpty()) {
      words.add("seen: " + seen);
    }
    return String.join(BETWEEN, words);
  }

  private String plate(Shot shot) {
    String cutFrom = photographs.ofPlate(shot);
    return "plate: " + (cutFrom.isEmpty() ? "panel " + shot.panel().name() + " plate" : cutFrom);
  }

  private static String camera(Field field) {
    return field.isMoving()
        ? "camera goes from " + squares(field.from()) + " to " + squares(field.to())
        : "camera: " + squares(field.from());
  }

  /** What the camera sees on a frame, or "" where the panel does not say. */
  String camera(Shot shot, long frame) {
    return Framing.of(sheet.timing(), shot)
        .map(framing -> squares(framing.fieldAt(frame)))
        .orElse("");
  }

  private static String squares(Rect rect) {
    return number(rect.width())
        + " squares wide at "
        + number(rect.left())
        + ", "
        + number(rect.top());
  }

  private static String number(double squares) {
    return SheetWords.plain(SheetWords.hundredths(squares));
  }
}
