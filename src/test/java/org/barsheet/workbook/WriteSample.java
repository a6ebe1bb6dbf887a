package org.barsheet.workbook;

import java.nio.file.Path;
import org.barsheet.exposure.FilmSheet;

final class WriteSample {
  private WriteSample() {}

  public static void main(String[] args) throws Exception {
    SampleFilm sample = SampleFilm.harbour();
    if (args.length > 1) {
      sample.drawing(Path.of(args[1]));
    }
    if (args.length > 2) {
      sample.paper(org.barsheet.plan.Film.Paper.valueOf(args[2]));
    }
    FilmSheet film = sample.make();
    long t = System.nanoTime();
    WorkbookWriter.write(film, Path.of(args[0]));
    System.err.println((System.nanoTime() - t) / 1e9);
  }
}
