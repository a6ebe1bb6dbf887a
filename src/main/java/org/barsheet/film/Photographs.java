package org.barsheet.film;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.barsheet.artwork.Framing;
import org.barsheet.artwork.PhotographCrop;
import org.barsheet.artwork.Rects;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Rect;
import org.barsheet.shooting.ArtworkPlate;
import org.barsheet.shooting.Setup;
import org.barsheet.timing.Shot;

/**
 * Which photographs a film's photographs are parts of, and which part each frame shows: one
 * photograph may serve several panels, and a camera that moves in the film stands still on the copy
 * stand.
 */
public final class Photographs {

  private final FilmSheet sheet;
  private final Rect wholeArtwork;
  private final Map<String, Rect> views = new HashMap<>();
  private final Map<String, Opening> firstOpenings = new HashMap<>();
  private final Map<String, ArtworkPlate> atRest = new HashMap<>();

  public Photographs(FilmSheet sheet) {
    this.sheet = sheet;
    Artwork artwork = sheet.plan().workshop().artwork();
    Film film = sheet.plan().film();
    this.wholeArtwork =
        Rects.shaped(
            new Rect(0, 0, artwork.squaresWide(), artwork.squaresHigh()),
            (double) film.height() / film.width());
    for (Setup setup : sheet.shooting().setups()) {
      setup
          .view()
          .ifPresent(
              view -> setup.runs().forEach(run -> views.put(run.movement().name(), view.field())));
    }
    for (ArtworkPlate photograph : sheet.shooting().atRest()) {
      photograph.panels().forEach(panel -> atRest.putIfAbsent(panel, photograph));
    }
    sheet.reveals().forEach(one -> firstOpenings.putIfAbsent(one.movement(), one.opening()));
  }

  /**
   * The photograph that a shot's plate is cut out of, by its permanent name, which the plate has
   * everywhere: one of the whole artwork at rest or, where the artwork itself moves in the shot,
   * the photograph it begins with.
   */
  public String ofPlate(Shot shot) {
    return atRest(shot)
        .map(ArtworkPlate::name)
        .or(() -> movingArtwork(shot).map(Photographs::firstPhotograph))
        .orElse("");
  }

  private Optional<ArtworkPlate> atRest(Shot shot) {
    return Optional.ofNullable(atRest.get(shot.panel().name()));
  }

  private Optional<PlannedReveal> movingArtwork(Shot shot) {
    return sheet.revealsOf(shot).stream().filter(this::isOfArtwork).findFirst();
  }

  private static String firstPhotograph(PlannedReveal reveal) {
    return reveal.exposures().get(0).photograph().name();
  }

  private boolean isOfArtwork(PlannedReveal reveal) {
    return sheet
        .plan()
        .workshop()
        .artwork()
        .model(reveal.opening().model())
        .map(model -> model.enlarged() == 1)
        .orElse(true);
  }

  /**
   * The part of a shot's plate's photograph that a film frame of the shot shows; empty where the
   * panel does not say what the camera sees.
   */
  public Optional<PhotographCrop> plateCrop(Shot shot, long frame) {
    Optional<Rect> field = field(shot, frame);
    if (atRest(shot).isPresent()) {
      return field.map(seen -> PhotographCrop.of(seen, wholeArtwork));
    }
    return movingArtwork(shot).flatMap(reveal -> crop(reveal, field));
  }

  /**
   * The part of a reveal's photographs that a film frame of its shot shows; empty where the panel
   * does not say what the camera sees.
   */
  public Optional<PhotographCrop> crop(PlannedReveal reveal, long frame) {
    List<Shot> shots = sheet.timing().shots();
    return crop(reveal, field(shots.get(reveal.shot()), frame));
  }

  private Optional<Rect> field(Shot shot, long frame) {
    return Framing.of(sheet.timing(), shot).map(framing -> framing.fieldAt(frame));
  }

  /** The opening a movement is first shown for: its photographs are taken about that. */
  public Opening firstOpening(Movement movement) {
    return Objects.requireNonNull(firstOpenings.get(movement.name()), "a movement of another film");
  }

  /**
   * What a movement's photographs show, in squares of the artwork; where no panel says what the
   * camera sees, its opening with room about it.
   */
  public Rect view(Movement movement) {
    Rect view = views.get(movement.name());
    if (view != null) {
      return view;
    }
    Rect opening = firstOpening(movement).rect();
    Rect roomy =
        new Rect(
            opening.left() - opening.width(),
            opening.top() - opening.height(),
            3 * opening.width(),
            3 * opening.height());
    return Rects.shaped(roomy, wholeArtwork.height() / wholeArtwork.width());
  }

  /** What a photograph of the whole artwork shows, in squares: all of it, in the frame's shape. */
  public Rect wholeArtwork() {
    return wholeArtwork;
  }

  /** The view lies about the opening the movement is first shown for. */
  private Optional<PhotographCrop> crop(PlannedReveal reveal, Optional<Rect> field) {
    Rect view = views.get(reveal.movement());
    Opening first = firstOpenings.get(reveal.movement());
    if (view == null || first == null || field.isEmpty()) {
      return Optional.empty();
    }
    double right = first.rect().left() - reveal.opening().rect().left();
    double down = first.rect().top() - reveal.opening().rect().top();
    return Optional.of(PhotographCrop.of(Rects.moved(field.get(), right, down), view));
  }
}
