package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/**
 * Every film frame as a row: the picture shown on each layer. A layer is empty where the shot has
 * nothing on it: the artwork stands as it is.
 */
final class PicturesCsv {

  private PicturesCsv() {}

  static void write(FilmSheet sheet, OutputStream out) throws IOException {
    Film film = sheet.timing().plan().film();
    int layers = layers(sheet);
    try (CsvFile table = new CsvFile(out, film.rate(), columns(layers))) {
      for (Shot shot : sheet.timing().shots()) {
        String[][] pictures = pictures(sheet, shot, layers);
        for (int i = 0; i < shot.frames().length(); i++) {
          long frame = shot.frames().start() + i;
          List<Object> row = new ArrayList<>();
          row.add(frame);
          row.add(film.timecode(frame).toString());
          row.add(shot.panel().name());
          row.add(i + 1);
          row.addAll(List.of(pictures[i]));
          table.row(row);
        }
      }
    }
  }

  /** The most layers any shot has. */
  static int layers(FilmSheet sheet) {
    return sheet.reveals().stream().mapToInt(PlannedReveal::layer).max().orElse(0);
  }

  private static List<String> columns(int layers) {
    List<String> columns = new ArrayList<>(List.of("frame", "timecode", "panel", "frame_in_shot"));
    for (int layer = 1; layer <= layers; layer++) {
      columns.add("layer_" + layer);
    }
    return columns;
  }

  /** Picture names by frame in the shot and layer, "" for an empty layer. */
  private static String[][] pictures(FilmSheet sheet, Shot shot, int layers) {
    String[][] pictures = new String[Math.toIntExact(shot.frames().length())][layers];
    for (String[] frame : pictures) {
      java.util.Arrays.fill(frame, "");
    }
    for (PlannedReveal reveal : sheet.reveals()) {
      if (reveal.shot() == shot.index()) {
        for (Exposure exposure : reveal.exposures()) {
          fill(pictures, shot.frames(), exposure, reveal.layer() - 1);
        }
      }
    }
    return pictures;
  }

  private static void fill(String[][] pictures, FrameSpan shot, Exposure exposure, int layer) {
    for (long f = exposure.frames().start(); f < exposure.frames().endExclusive(); f++) {
      pictures[(int) (f - shot.start())][layer] = exposure.picture().name();
    }
  }
}
