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
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/**
 * A drawing in the place of every photograph still to take, under the photograph's final name, so
 * that the whole film can be put together before anything is photographed.
 */
public final class Placeholders {

  /** Keyword of the text in a placeholder's file that tells it from a photograph. */
  private static final String KEYWORD = "Description";

  private static final String MARK = "barsheet placeholder";

  /** Our mark stands within the first bytes of the file, before the photograph. */
  private static final int HEAD = 1024;

  private Placeholders() {}

  /** A plate a shot, and every photograph of every movement, in {@code photographs/}. */
  public static List<HandoffFile> files(FilmSheet sheet) {
    Film film = sheet.plan().film();
    List<HandoffFile> files = new ArrayList<>();
    Photographs photographs = new Photographs(sheet);
    for (Shot shot : sheet.timing().shots()) {
      files.add(
          file(
              PhotographPaths.ofPlate(shot),
              film,
              canvas -> PlateDrawing.draw(canvas, sheet, photographs, shot)));
    }
    PhotographParts parts = new PhotographParts(sheet);
    for (Movement movement : sheet.movements()) {
      PlaceholderDrawing drawing = new PlaceholderDrawing(sheet, movement, parts);
      for (MovedPhotograph photograph : movement.photographs()) {
        files.add(
            file(
                PhotographPaths.of(photograph.photograph()),
                film,
                canvas -> drawing.draw(canvas, photograph)));
      }
    }
    return List.copyOf(files);
  }

  /** Where a photograph is kept, seen from the folder of the sheets, without its extension. */
  public static String pathOf(String photograph) {
    return PhotographPaths.bare(photograph);
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
