package org.barsheet.review;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.film.FilmSheet;
import org.barsheet.photographs.PlannedSequence;
import org.barsheet.photographs.PlannedSequences;
import org.barsheet.photographs.SmallPhotograph;
import org.barsheet.photographs.TakenPhotographs;
import org.barsheet.plan.Rect;

/** The photographs that are there, small and as data addresses: the page plays them. */
final class PagePhotographs {

  /** So much of the page they may take, all together; a data address is a third longer. */
  private static final int MOST_BYTES = 4_500_000;

  private static final int WIDE = 480;
  private static final int LEAST_WIDE = 160;

  private final FilmSheet sheet;
  private final TakenPhotographs taken;
  private final PageJson json;
  private final int mostWide;

  PagePhotographs(FilmSheet sheet, PageJson json) {
    this.sheet = sheet;
    this.taken = sheet.taken();
    this.json = json;
    long bytes = 0;
    for (Movement movement : sheet.movements()) {
      for (MovedPhotograph one : movement.photographs()) {
        bytes += taken.small(one.photograph().name()).map(small -> small.length).orElse(0);
      }
    }
    double scale = bytes > MOST_BYTES ? Math.sqrt((double) MOST_BYTES / bytes) : 1;
    this.mostWide = Math.max(LEAST_WIDE, (int) (WIDE * scale));
  }

  /** Writes those of a movement, one after another; "" for one that was not taken. */
  void write(Movement movement) {
    if (movement.photographs().stream().noneMatch(one -> taken.has(one.photograph().name()))) {
      return;
    }
    PlannedSequence.Moving moving =
        new PlannedSequences(sheet.plan(), sheet.shooting())
            .called(movement.name())
            .moving()
            .orElseThrow();
    Optional<Rect> view = moving.view();
    if (view.isEmpty()) {
      return;
    }
    List<String> photographs = new ArrayList<>();
    List<String> keys = new ArrayList<>();
    for (MovedPhotograph one : movement.photographs()) {
      Optional<SmallPhotograph> small =
          taken
              .small(one.photograph().name())
              .flatMap(jpeg -> SmallPhotograph.of(jpeg, moving, mostWide));
      photographs.add(small.map(s -> address("image/jpeg", s.jpeg())).orElse(""));
      keys.add(small.flatMap(SmallPhotograph::mask).map(m -> address("image/png", m)).orElse(""));
    }
    ArtworkData.rect(json, "view", view.get());
    ArtworkData.rect(json, "about", moving.opening().rect());
    json.texts("photographs", photographs).texts("keys", keys);
  }

  private static String address(String type, byte[] bytes) {
    return "data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes);
  }

  /** {@code 231 of 280 photographs taken}; nothing before the first. */
  static Optional<String> counted(FilmSheet sheet) {
    long planned = sheet.movements().stream().mapToLong(one -> one.photographs().size()).sum();
    long there =
        sheet.movements().stream()
            .flatMap(one -> one.photographs().stream())
            .filter(one -> sheet.taken().has(one.photograph().name()))
            .count();
    return there == 0
        ? Optional.empty()
        : Optional.of(there + " of " + planned + " photographs taken");
  }
}
