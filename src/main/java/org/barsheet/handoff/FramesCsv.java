package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.artwork.PhotographCrop;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.Photographs;
import org.barsheet.frames.FilmFrames;
import org.barsheet.plan.Film;
import org.barsheet.timing.Shot;

/**
 * Every film frame as a row: the order of its layers from back to front, the photograph its plate
 * is cut from, and the photograph shown on each layer over it. A layer is empty where the shot has
 * nothing on it: the plate is held. Of every photograph the row says which part fills the frame.
 */
final class FramesCsv {

  private FramesCsv() {}

  static void write(FilmSheet sheet, OutputStream out) throws IOException {
    Film film = sheet.plan().film();
    int layers = layers(sheet);
    Photographs photographs = new Photographs(sheet);
    FilmFrames frames = FilmFrames.of(sheet, drawing -> false);
    try (CsvFile table = new CsvFile(out, film.rate(), columns(layers))) {
      for (Shot shot : sheet.timing().shots()) {
        List<Layer> shown = layers(sheet, photographs, shot, layers);
        String plate = photographs.ofPlate(shot);
        for (long frame = shot.frames().start(); frame < shot.frames().endExclusive(); frame++) {
          List<Object> row = new ArrayList<>();
          row.add(frame);
          row.add(film.timecode(frame).toString());
          row.add(shot.panel().name());
          row.add(frame - shot.frames().start() + 1);
          row.add(String.join(FilmWords.OVER, frames.at(frame).order()));
          row.add(plate);
          addPart(row, photographs.plateCrop(shot, frame));
          for (Layer layer : shown) {
            layer.addTo(row, frame);
          }
          table.row(row);
        }
      }
    }
  }

  private static void addPart(List<Object> row, Optional<PhotographCrop> part) {
    row.add(part.<Object>map(crop -> FilmWords.decimal(crop.left())).orElse(""));
    row.add(part.<Object>map(crop -> FilmWords.decimal(crop.top())).orElse(""));
    row.add(part.<Object>map(crop -> FilmWords.decimal(crop.width())).orElse(""));
    row.add(part.<Object>map(crop -> FilmWords.decimal(crop.height())).orElse(""));
  }

  /** What one layer shows in one shot, asked frame by frame in order. */
  private static final class Layer {
    private final Photographs photographs;
    private final List<PlannedReveal> reveals;

    Layer(Photographs photographs, List<PlannedReveal> reveals) {
      this.photographs = photographs;
      this.reveals = reveals;
    }

    /** Adds the photograph's name and part, or blanks where there is none. */
    void addTo(List<Object> row, long frame) {
      for (PlannedReveal reveal : reveals) {
        Optional<Exposure> shown = on(reveal, frame);
        if (shown.isPresent()) {
          row.add(shown.get().photograph().name());
          addPart(row, photographs.crop(reveal, frame));
          return;
        }
      }
      row.add("");
      addPart(row, Optional.empty());
    }

    private static Optional<Exposure> on(PlannedReveal reveal, long frame) {
      List<Exposure> exposures = reveal.exposures();
      int low = 0;
      int high = exposures.size() - 1;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (exposures.get(middle).frames().endExclusive() <= frame) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      return Optional.of(exposures.get(low)).filter(one -> one.frames().contains(frame));
    }
  }

  /** The most layers any shot has. */
  static int layers(FilmSheet sheet) {
    return sheet.reveals().stream().mapToInt(PlannedReveal::layer).max().orElse(0);
  }

  private static List<String> columns(int layers) {
    List<String> columns =
        new ArrayList<>(
            List.of("frame", "timecode", "panel", "frame_in_shot", "back_to_front", "plate"));
    addPart(columns, "plate");
    for (int layer = 1; layer <= layers; layer++) {
      columns.add("layer_" + layer);
      addPart(columns, "layer_" + layer);
    }
    return columns;
  }

  /** Columns of the part of a photograph that fills the frame, in shares of it. */
  private static void addPart(List<String> columns, String photograph) {
    List.of("left", "top", "width", "height").forEach(edge -> columns.add(photograph + "_" + edge));
  }

  private static List<Layer> layers(
      FilmSheet sheet, Photographs photographs, Shot shot, int count) {
    List<Layer> layers = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      int layer = number;
      layers.add(
          new Layer(
              photographs,
              sheet.revealsOf(shot).stream().filter(reveal -> reveal.layer() == layer).toList()));
    }
    return layers;
  }
}
