package org.barsheet.handoff;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.handoff.drawing.Canvas;
import org.barsheet.plan.Film;
import org.barsheet.shooting.ArtworkPlate;

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

  /** Every photograph of the artwork at rest and of every movement, in {@code photographs/}. */
  public static List<HandoffFile> files(FilmSheet sheet) {
    Film film = sheet.plan().film();
    List<HandoffFile> files = new ArrayList<>();
    Photographs photographs = new Photographs(sheet);
    for (ArtworkPlate plate : sheet.shooting().atRest()) {
      files.add(file(plate.name(), film, canvas -> draw(canvas, sheet, photographs, plate)));
    }
    for (Movement movement : sheet.movements()) {
      PlaceholderDrawing drawing = new PlaceholderDrawing(sheet, photographs, movement);
      for (MovedPhotograph photograph : movement.photographs()) {
        files.add(
            file(photograph.photograph().name(), film, canvas -> drawing.draw(canvas, photograph)));
      }
    }
    return List.copyOf(files);
  }

  private static void draw(
      Canvas canvas, FilmSheet sheet, Photographs photographs, ArtworkPlate plate) {
    Map<String, Double> open = new HashMap<>();
    plate.open().forEach(one -> open.put(one.opening(), one.open()));
    String panels = plate.panels().size() == 1 ? "panel " : "panels ";
    String caption = "the whole artwork; " + panels + String.join(", ", plate.panels());
    new PlateDrawing(sheet).draw(canvas, photographs.wholeArtwork(), open, plate.name(), caption);
  }

  /** Where a photograph is kept, seen from the folder of the sheets, without its extension. */
  public static String pathOf(String photograph) {
    return PhotographPaths.bare(photograph);
  }

  private interface Drawing {
    void on(Canvas canvas);
  }

  private static HandoffFile file(String photograph, Film film, Drawing drawing) {
    return new HandoffFile(
        PhotographPaths.of(photograph),
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
