package org.barsheet.handoff;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPicture;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/**
 * A drawing in the place of every picture still to take, under the picture's final name, so that
 * the whole film can be put together before anything is photographed.
 */
public final class Placeholders {

  /** Keyword of the text in a placeholder's file that tells it from a photograph. */
  private static final String KEYWORD = "Description";

  private static final String MARK = "barsheet placeholder";

  /** Our mark stands within the first bytes of the file, before the picture. */
  private static final int HEAD = 1024;

  private Placeholders() {}

  /** A plate a shot, and every picture of every movement, in {@code pictures/}. */
  public static List<HandoffFile> files(FilmSheet sheet) {
    Film film = sheet.plan().film();
    List<HandoffFile> files = new ArrayList<>();
    Photographs photographs = new Photographs(sheet);
    for (Shot shot : sheet.timing().shots()) {
      files.add(
          file(
              PicturePaths.ofPlate(shot),
              film,
              canvas -> PlateDrawing.draw(canvas, sheet, photographs, shot)));
    }
    PictureParts parts = new PictureParts(sheet);
    for (Movement movement : sheet.movements()) {
      PictureDrawing drawing = new PictureDrawing(sheet, movement, parts);
      for (MovedPicture picture : movement.pictures()) {
        files.add(
            file(
                PicturePaths.of(picture.picture()), film, canvas -> drawing.draw(canvas, picture)));
      }
    }
    return List.copyOf(files);
  }

  private interface Drawing {
    void on(Canvas canvas);
  }

  private static HandoffFile file(String path, Film film, Drawing drawing) {
    return new HandoffFile(
        path,
        out -> {
          Canvas canvas = new Canvas(film.width(), film.height());
          drawing.on(canvas);
          canvas.writePng(out, KEYWORD, MARK);
        });
  }

  /** Whether a placeholder may be put here: nothing stands here, or another placeholder. */
  public static boolean mayStandAt(Path file) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
      String head = new String(in.readNBytes(HEAD), StandardCharsets.ISO_8859_1);
      return head.contains(KEYWORD + '\0' + MARK);
    } catch (IOException unreadable) {
      return false;
    }
  }
}
