package org.barsheet.changes;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidFilm.LaidAppearance;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.changes.LaidFilm.LaidExposure;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.revision.BarNote;
import org.barsheet.revision.Revision;
import org.barsheet.score.BarBeat;
import org.barsheet.timing.LaidPanel;

/** Which thing of an earlier run is which of now, and whether it is still as it was. */
public final class Identities {

  /**
   * What a thing was called in the earlier run.
   *
   * @param name its name then
   * @param changed whether it is another now: other notes, other music, another length
   */
  public record Origin(String name, boolean changed) {}

  private final LaidFilm before;
  private final LaidFilm now;
  private final boolean revised;
  private final Map<String, LaidShot> shotsBefore;
  private final Map<String, LaidShot> shotsNow;
  private final Map<String, Origin> cues = new HashMap<>();
  private final Set<String> otherMovements = new HashSet<>();

  Identities(
      LaidFilm before,
      LaidFilm now,
      List<CueChange> lasting,
      List<PhotographChange> photographs,
      Optional<Revision> revision) {
    this.before = before;
    this.now = now;
    this.revised = revision.filter(between -> !between.sameNotes()).isPresent();
    this.shotsBefore = before.shotsByPanel();
    this.shotsNow = now.shotsByPanel();
    for (CueChange change : lasting) {
      if (change.before().isPresent() && change.now().isPresent()) {
        LaidCue was = change.before().get();
        LaidCue is = change.now().get();
        cues.put(is.id(), new Origin(was.id(), !melody(was).equals(melody(is))));
      }
    }
    for (LaidCue cue : now.cues()) {
      if (!cue.isLasting()) {
        placed(cue, revision).ifPresent(id -> cues.put(cue.id(), new Origin(id, false)));
      }
    }
    photographs.stream()
        .filter(change -> change.use() == PhotographChange.Use.TAKE)
        .forEach(change -> otherMovements.add(movement(change.photograph())));
  }

  /** The notes of a return, seen from its first. */
  private static List<BarNote> melody(LaidCue cue) {
    List<BarNote> notes = cue.held().map(held -> held.notes()).orElse(List.of());
    return notes.stream()
        .map(note -> new BarNote(note.at() - notes.get(0).at(), note.pitch()))
        .toList();
  }

  /** Id of the earlier cue of a place that is only there because a panel asks for it. */
  private Optional<String> placed(LaidCue cue, Optional<Revision> revision) {
    if (!cue.kind().equals("bar") || revision.isEmpty()) {
      return Optional.of(cue.id());
    }
    return before.cues().stream()
        .filter(was -> was.kind().equals("bar"))
        .filter(was -> isThere(revision.get(), was, cue))
        .map(LaidCue::id)
        .findFirst();
  }

  private static boolean isThere(Revision revision, LaidCue was, LaidCue is) {
    return revision
        .of(new BarBeat(was.bar(), 1, fraction(was.beat())))
        .sure()
        .filter(place -> place.bar() == is.bar())
        .filter(place -> new BigDecimal(place.beatText()).compareTo(is.beat()) == 0)
        .isPresent();
  }

  private static BigFraction fraction(BigDecimal number) {
    BigDecimal plain = number.setScale(Math.max(0, number.scale()));
    return BigFraction.of(plain.unscaledValue(), BigInteger.TEN.pow(plain.scale()));
  }

  /** What a cue of now was, by their ids; nothing for one that is new. */
  public Optional<Origin> ofCue(String id) {
    return Optional.ofNullable(cues.get(id));
  }

  /** Panels of the earlier run, each on its cue under the id that cue has now. */
  List<LaidPanel> underNamesOfNow(List<LaidPanel> panels) {
    Map<String, String> ids = new HashMap<>();
    cues.forEach((is, origin) -> ids.put(origin.name(), is));
    return panels.stream().map(panel -> underNameOfNow(panel, ids)).toList();
  }

  private LaidPanel underNameOfNow(LaidPanel panel, Map<String, String> ids) {
    String gone = "was " + panel.cueId();
    String id = ids.getOrDefault(panel.cueId(), gone);
    String said = panel.cue() + (revised && id.equals(gone) ? " of the old score" : "");
    String cue = now.cue(id).map(LaidCue::words).orElse(said);
    return new LaidPanel(panel.name(), id, cue, panel.frames(), panel.landings());
  }

  /** Whether a panel of both runs sits on other music than it did. */
  public boolean isOnOtherMusic(String panel) {
    Optional<LaidShot> was = Optional.ofNullable(shotsBefore.get(panel));
    Optional<LaidShot> is = Optional.ofNullable(shotsNow.get(panel));
    if (was.isEmpty() || is.isEmpty()) {
      return false;
    }
    Optional<Origin> origin = ofCue(is.get().cue());
    return origin.isEmpty()
        || origin.get().changed()
        || !origin.get().name().equals(was.get().cue());
  }

  /** Whether a performer of both runs is seen for another length or with other music. */
  public boolean isSeenOtherwise(String panel, String performer, String opening) {
    Optional<LaidAppearance> was = seen(before, panel, performer, opening);
    Optional<LaidAppearance> is = seen(now, panel, performer, opening);
    return was.isPresent()
        && is.isPresent()
        && (was.get().frames().length() != is.get().frames().length() || isOnOtherMusic(panel));
  }

  private static Optional<LaidAppearance> seen(
      LaidFilm film, String panel, String performer, String opening) {
    return film.appearances().stream()
        .filter(seen -> seen.panel().equals(panel) && seen.performer().equals(performer))
        .filter(seen -> seen.opening().equals(opening))
        .findFirst();
  }

  /** Whether photographs of a movement must be taken that were not asked for before. */
  public boolean hasOtherPhotographs(String movement) {
    return otherMovements.contains(movement) && isMovementBefore(movement);
  }

  private boolean isMovementBefore(String movement) {
    return before.shots().stream()
        .flatMap(shot -> shot.reveals().stream())
        .flatMap(reveal -> reveal.exposures().stream())
        .anyMatch(exposure -> movement(exposure.photograph()).equals(movement));
  }

  private static String movement(String photograph) {
    return photograph.substring(0, photograph.lastIndexOf(' '));
  }

  /**
   * The row of a frame in the earlier run, which shows what it shows now.
   *
   * @param inShot from 1, within the panel's shot
   * @return its number within the shot then; nothing where there was no such frame
   */
  public Optional<Long> frameBefore(String panel, long inShot) {
    Optional<LaidShot> was = Optional.ofNullable(shotsBefore.get(panel));
    Optional<LaidShot> is = Optional.ofNullable(shotsNow.get(panel));
    if (was.isEmpty() || is.isEmpty()) {
      return Optional.empty();
    }
    Optional<Long> gapBefore = gap(was.get());
    long gap = gap(is.get()).filter(now -> gapBefore.isPresent()).orElse(0L);
    long moved = gap - gapBefore.filter(then -> gap(is.get()).isPresent()).orElse(0L);
    long there = inShot > gap ? inShot - moved : inShot;
    boolean cut = inShot <= gap && inShot > gap - moved;
    return cut || there < 1 || there > was.get().frames().length()
        ? Optional.empty()
        : Optional.of(there);
  }

  /** Frames of a shot before its first moved photograph, where one moves. */
  private static Optional<Long> gap(LaidShot shot) {
    return shot.reveals().stream()
        .findFirst()
        .map(reveal -> reveal.firstGapFrame() - shot.frames().start());
  }

  /** Whether another photograph is shown on a frame than on its row before. */
  public boolean showsOther(String panel, long inShot, long inShotBefore) {
    List<String> was = shown(Optional.ofNullable(shotsBefore.get(panel)), inShotBefore);
    return !was.equals(shown(Optional.ofNullable(shotsNow.get(panel)), inShot));
  }

  private static List<String> shown(Optional<LaidShot> shot, long inShot) {
    if (shot.isEmpty()) {
      return List.of();
    }
    long frame = shot.get().frames().start() + inShot - 1;
    return shot.get().reveals().stream()
        .map(LaidReveal::exposures)
        .flatMap(List::stream)
        .filter(exposure -> exposure.frames().contains(frame))
        .map(Identities::words)
        .toList();
  }

  private static String words(LaidExposure exposure) {
    return exposure.photograph() + " " + exposure.progress();
  }
}
