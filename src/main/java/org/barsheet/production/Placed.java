package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.handoff.Placeholders;

/**
 * Placeholders put among photographs.
 *
 * @param drawn placeholders written, in the order written
 * @param photographs files that stand in the place of a picture already and stay
 */
public record Placed(List<Path> drawn, List<Path> photographs) {

  public static final Placed NONE = new Placed(List.of(), List.of());

  public Placed {
    drawn = List.copyOf(drawn);
    photographs = List.copyOf(photographs);
  }

  /** Writes a placeholder wherever there is no photograph yet. */
  static Placed into(OutputFolder out, FilmSheet film) {
    List<Path> drawn = new ArrayList<>();
    List<Path> photographs = new ArrayList<>();
    for (HandoffFile file : Placeholders.files(film)) {
      Path target = out.folder().resolve(file.path());
      if (Placeholders.mayStandAt(target)) {
        out.write(file.path(), file.content());
        drawn.add(target);
      } else {
        photographs.add(target);
      }
    }
    return new Placed(drawn, photographs);
  }
}
