package org.barsheet.workbook.pen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.MotifTally;
import org.barsheet.timing.Shot;

/** Finds what belongs together in a film sheet. */
public final class FilmIndex {

  private final FilmSheet film;
  private final Map<String, String> signs = new LinkedHashMap<>();
  private final Map<String, Shot> shotOfCue = new LinkedHashMap<>();
  private final Map<String, Shot> shotOfPanel = new LinkedHashMap<>();

  public FilmIndex(FilmSheet film) {
    this.film = film;
    for (MotifTally tally : film.timing().tallies()) {
      signs.put(tally.motif(), tally.sign());
    }
    for (Shot shot : shots()) {
      shotOfCue.put(shot.cue().id(), shot);
      shotOfPanel.put(shot.panel().name(), shot);
    }
  }

  public List<Shot> shots() {
    return film.timing().shots();
  }

  public Shot shot(int index) {
    return shots().get(index);
  }

  /** The sign of a motif, or "". */
  public String sign(String motif) {
    return signs.getOrDefault(motif, "");
  }

  /** Every motif behind its sign, for the foot of a page: {@code M1 glimmer M2 tide}. */
  public String motifLegend() {
    return signs.entrySet().stream()
        .map(motif -> "   " + motif.getValue() + " " + motif.getKey())
        .collect(Collectors.joining());
  }

  /** The sign of a cue's motif, or "" where it is of none. */
  public String sign(Cue cue) {
    return cue.kind() == Cue.Kind.RETURN ? sign(cue.name()) : "";
  }

  public Optional<Shot> shotOn(Cue cue) {
    return Optional.ofNullable(shotOfCue.get(cue.id()));
  }

  public Optional<Shot> shotOf(String panel) {
    return Optional.ofNullable(shotOfPanel.get(panel));
  }

  /** The reveals of a shot, by layer. */
  public List<PlannedReveal> revealsOf(Shot shot) {
    return film.revealsOf(shot);
  }

  /** How many layers the film needs at once, at least one. */
  public int layers() {
    return film.reveals().stream().mapToInt(PlannedReveal::layer).max().orElse(1);
  }

  /** The bar that sounds on a film frame; the first bar before the music, the last after it. */
  public FilmBar barAt(long frame) {
    List<FilmBar> bars = film.timing().bars();
    int low = 0;
    int high = bars.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (bars.get(middle).startFrame() <= frame) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return bars.get(low);
  }

  /** Names of the parts that play an occurrence, the leading one first. */
  public String parts(Cue cue) {
    return cue.occurrence()
        .map(
            occurrence ->
                String.join(
                    "; ",
                    occurrence.parts().stream()
                        .map(part -> film.timing().music().score().parts().get(part).name())
                        .toList()))
        .orElse("");
  }
}
