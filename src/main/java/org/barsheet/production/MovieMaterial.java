package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.Placeholders;
import org.barsheet.movie.Material;
import org.barsheet.photographs.TakenPhotographs;
import org.barsheet.plan.Performer;

/**
 * The photographs that were taken in beside the plan, or else those in the sheets folder,
 * placeholders left out, and the clips that have come.
 */
final class MovieMaterial implements Material {

  private static final List<String> ENDINGS = List.of(".png", ".jpg", ".jpeg");

  private final TakenPhotographs taken;
  private final Path folder;
  private final Map<String, Path> clips;
  private final Map<String, Optional<Path>> photographs = new HashMap<>();

  MovieMaterial(FilmSheet film, Path folder) {
    this.taken = film.taken();
    this.folder = folder;
    this.clips = Clips.moving(film.plan(), film.clips());
  }

  @Override
  public Optional<Path> photograph(String name) {
    return photographs.computeIfAbsent(name, this::look);
  }

  private Optional<Path> look(String name) {
    return taken.file(name).filter(MovieMaterial::isPhotograph).or(() -> inSheets(name));
  }

  private Optional<Path> inSheets(String name) {
    String bare = Placeholders.pathOf(name);
    return ENDINGS.stream()
        .map(ending -> folder.resolve(bare + ending))
        .filter(MovieMaterial::isPhotograph)
        .findFirst();
  }

  private static boolean isPhotograph(Path file) {
    return Files.isRegularFile(file) && !Placeholders.mayStandAt(file);
  }

  @Override
  public Optional<Path> clip(Performer performer) {
    return Optional.ofNullable(clips.get(performer.name()));
  }
}
