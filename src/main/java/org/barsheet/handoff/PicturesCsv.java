package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/**
 * Every film frame as a row: the shot's plate, the photograph it is cut from, and the picture shown
 * on each layer over it. A layer is empty where the shot has nothing on it: the plate is held.
 */
final class PicturesCsv {

  private PicturesCsv() {}

  static void write(FilmSheet sheet, OutputStream out) throws IOException {
    Film film = sheet.timing().plan().film();
    int layers = layers(sheet);
    try (CsvFile table = new CsvFile(out, film.rate(), columns(layers))) {
      for (Shot shot : sheet.timing().shots()) {
        List<Layer> shown = layers(sheet, shot, layers);
        String plate = PicturePaths.plate(shot);
        String photograph = PicturePaths.photograph(sheet, shot);
        for (long frame = shot.frames().start(); frame < shot.frames().endExclusive(); frame++) {
          List<Object> row = new ArrayList<>();
          row.add(frame);
          row.add(film.timecode(frame).toString());
          row.add(shot.panel().name());
          row.add(frame - shot.frames().start() + 1);
          row.add(plate);
          row.add(photograph);
          for (Layer layer : shown) {
            row.add(layer.pictureOn(frame));
          }
          table.row(row);
        }
      }
    }
  }

  /** What one layer shows in one shot, asked frame by frame. */
  private static final class Layer {
    private final List<Exposure> exposures;
    private int next;

    Layer(List<Exposure> exposures) {
      this.exposures = exposures;
    }

    /** The picture's name, or "" where there is none; frames must be asked in order. */
    String pictureOn(long frame) {
      while (next < exposures.size() && exposures.get(next).frames().endExclusive() <= frame) {
        next++;
      }
      boolean shows = next < exposures.size() && exposures.get(next).frames().contains(frame);
      return shows ? exposures.get(next).picture().name() : "";
    }
  }

  /** The most layers any shot has. */
  static int layers(FilmSheet sheet) {
    return sheet.reveals().stream().mapToInt(PlannedReveal::layer).max().orElse(0);
  }

  private static List<String> columns(int layers) {
    List<String> columns =
        new ArrayList<>(
            List.of("frame", "timecode", "panel", "frame_in_shot", "plate", "plate_cut_from"));
    for (int layer = 1; layer <= layers; layer++) {
      columns.add("layer_" + layer);
    }
    return columns;
  }

  private static List<Layer> layers(FilmSheet sheet, Shot shot, int count) {
    List<Layer> layers = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      int layer = number;
      layers.add(
          new Layer(
              sheet.reveals().stream()
                  .filter(reveal -> reveal.shot() == shot.index() && reveal.layer() == layer)
                  .flatMap(reveal -> reveal.exposures().stream())
                  .toList()));
    }
    return layers;
  }
}
