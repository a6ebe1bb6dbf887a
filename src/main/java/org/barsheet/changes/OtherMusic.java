package org.barsheet.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/**
 * What a plan asks for in the words it used before, and gets other music for: the score was
 * revised, or is heard differently, and the plan was not.
 *
 * @param findings one for each such place: an error where it must not move any more or a performer
 *     was called for it, else a warning
 * @param unresolved the music those places meant, until the plan is put right
 */
public record OtherMusic(List<Finding> findings, List<LaidMusic> unresolved) {

  public static final OtherMusic NONE = new OtherMusic(List.of(), List.of());

  private static final Finding UNKNOWN =
      new Finding(
          Severity.WARNING,
          Concerns.DIRECTOR,
          "",
          "",
          OptionalLong.empty(),
          "the score changed, but the earlier sheets don't hold its old notes, so panels that are on"
              + " different music now can't be listed",
          "check every panel's place once; to see what changed, run barsheet compare old.mid new.mid");

  public OtherMusic {
    findings = List.copyOf(findings);
    unresolved = List.copyOf(unresolved);
  }

  /** What lies between two films; of one whose notes were not kept it is said that nobody knows. */
  static OtherMusic between(LaidFilm before, LaidFilm now) {
    boolean unknown = before.music().isEmpty() && !before.score().equals(now.score());
    return unknown
        ? new OtherMusic(List.of(UNKNOWN), List.of())
        : between(before.standpoints(), now.heard());
  }

  /**
   * Compares what a plan means with what it meant.
   *
   * @param before the music that each of its places goes back to ({@link LaidFilm#standpoints}); of
   *     runs that did not keep their notes nothing is said
   */
  public static OtherMusic between(List<LaidMusic> before, LaidMusic now) {
    List<Finding> findings = new ArrayList<>();
    List<LaidMusic> unresolved = new ArrayList<>();
    for (LaidMusic standpoint : before) {
      if (standpoint.notes().isPresent() && now.notes().isPresent()) {
        OtherMusicFinder finder = OtherMusicFinder.of(standpoint, now);
        findings.addAll(finder.findings());
        if (!finder.unresolved().asks().isEmpty()) {
          unresolved.add(finder.unresolved());
        }
      }
    }
    return new OtherMusic(findings, unresolved);
  }
}
