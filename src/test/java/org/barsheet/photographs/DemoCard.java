package org.barsheet.photographs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.film.FilmSheet;
import org.barsheet.photographs.CopyStand.Shot;
import org.barsheet.production.Production;

/** A camera's card with a movement of a plan, as its copy stand sees it. */
public final class DemoCard {

  private DemoCard() {}

  /** What is wrong with a photograph, told its number. */
  public interface Spoiling {
    void spoil(int number, Shot shot);
  }

  /** Takes a movement into {@code IMG_4031.JPG} and so on. */
  public static void take(
      Path plan, String name, Path folder, int width, int from, int to, Spoiling spoiling)
      throws IOException {
    FilmSheet film = Production.film(plan, step -> {});
    PlannedSequence planned = new PlannedSequences(film.plan(), film.shooting()).called(name);
    CopyStand stand =
        CopyStand.of(planned.moving().orElseThrow(), width, Math.round(width * 9 / 16f), 7);
    Files.createDirectories(folder);
    for (PlannedPhotograph one : planned.photographs()) {
      if (one.number() >= from && one.number() <= to) {
        Shot shot = new Shot(one.amount());
        spoiling.spoil(one.number(), shot);
        stand.take(shot, folder.resolve("IMG_" + (4031 + one.number()) + ".JPG"));
      }
    }
  }

  /** The demo's lamp with the camera bumped at photograph 17: arguments are plan, folder, width. */
  public static void main(String[] args) throws IOException {
    take(
        Path.of(args[0]),
        "bakers-lamp",
        Path.of(args[1]),
        Integer.parseInt(args[2]),
        0,
        99,
        (number, shot) -> {
          shot.across = number >= 17 ? 2.3 : 0;
          shot.down = number >= 17 ? -0.8 : 0;
        });
  }
}
