package org.barsheet.frames;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.barsheet.exposure.OpeningState;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Field;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;
import org.barsheet.timing.Shot;

/**
 * Which drawings stand for the plate of each shot: its own where the camera stands still, else the
 * nearest one of the whole artwork.
 */
final class ShotDrawings {

  /** A field this near to the whole artwork, in squares, shows the whole artwork. */
  private static final double WHOLE = 0.05;

  private final FilmSheet sheet;
  private final Rect artwork;
  private final Predicate<Path> canBeShown;
  private final List<Shot> ofWholeArtwork;

  ShotDrawings(FilmSheet sheet, Rect artwork, Predicate<Path> canBeShown) {
    this.sheet = sheet;
    this.artwork = artwork;
    this.canBeShown = canBeShown;
    this.ofWholeArtwork =
        sheet.timing().shots().stream()
            .filter(shot -> own(shot).isPresent() && showsWhole(shot))
            .toList();
  }

  /** The shot's own drawing, where it can be shown. */
  Optional<Path> own(Shot shot) {
    return shot.panel().drawing().filter(canBeShown);
  }

  /** Whether the camera moves over the artwork in a shot. */
  static boolean moves(Shot shot) {
    return shot.panel().field().filter(Field::isMoving).isPresent();
  }

  /** The shot nearest in the story whose drawing shows the whole artwork; of two the earlier. */
  Optional<Shot> whole(Shot shot) {
    return ofWholeArtwork.stream()
        .min(Comparator.comparingInt(each -> Math.abs(each.index() - shot.index())));
  }

  private boolean showsWhole(Shot shot) {
    return !moves(shot) && shot.panel().field().map(Field::from).map(this::isWhole).orElse(true);
  }

  private boolean isWhole(Rect field) {
    return Math.abs(field.left() - artwork.left()) < WHOLE
        && Math.abs(field.top() - artwork.top()) < WHOLE
        && Math.abs(field.width() - artwork.width()) < WHOLE
        && Math.abs(field.height() - artwork.height()) < WHOLE;
  }

  /** The shot whose drawing the camera looks at. */
  Optional<Shot> looksAt(Shot shot) {
    return moves(shot) || own(shot).isEmpty() ? whole(shot) : Optional.of(shot);
  }

  /** The openings that the drawing shows as they are planned: they stand still, and stood so. */
  Set<String> asDrawn(Shot shot) {
    Set<String> asDrawn = new HashSet<>();
    looksAt(shot)
        .ifPresent(
            there -> {
              for (Opening opening : sheet.plan().workshop().openings()) {
                Optional<Double> stands = standsAt(shot, opening.name());
                if (stands.isPresent() && stands.equals(standsAt(there, opening.name()))) {
                  asDrawn.add(opening.name());
                }
              }
            });
    return Set.copyOf(asDrawn);
  }

  /** How an opening stands throughout a shot; empty where it moves. */
  private Optional<Double> standsAt(Shot shot, String opening) {
    boolean moves =
        sheet.revealsOf(shot).stream().anyMatch(r -> r.opening().name().equals(opening));
    return moves
        ? Optional.empty()
        : Optional.of(
            sheet.statesOf(shot).stream()
                .filter(state -> state.opening().equals(opening))
                .map(OpeningState::atFirstFrame)
                .findFirst()
                .orElse(0.0));
  }
}
