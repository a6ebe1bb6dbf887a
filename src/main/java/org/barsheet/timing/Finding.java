package org.barsheet.timing;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * Something doubtful or wrong about the film.
 *
 * @param severity how bad
 * @param concerns who must act
 * @param panel name of the panel it is about, or ""
 * @param place where in the music or the film, as people say it ("bar 33 beat 2"), or ""
 * @param frame film frame it can be seen at, where there is one
 * @param sentence what is so, without a closing full stop
 * @param remedy what to do, or "" for a plain remark
 * @param alike what it has in common with others, where one sentence can tell them together
 */
public record Finding(
    Severity severity,
    Concerns concerns,
    String panel,
    String place,
    OptionalLong frame,
    String sentence,
    String remedy,
    Optional<Alike> alike) {

  /** One that is told by itself. */
  public Finding(
      Severity severity,
      Concerns concerns,
      String panel,
      String place,
      OptionalLong frame,
      String sentence,
      String remedy) {
    this(severity, concerns, panel, place, frame, sentence, remedy, Optional.empty());
  }

  /** The same, to be told together with others of which the same can be said. */
  public Finding alike(String ofMany, String one) {
    Alike shared = new Alike(ofMany, one);
    return new Finding(
        severity, concerns, panel, place, frame, sentence, remedy, Optional.of(shared));
  }

  /**
   * What many findings say in one sentence, "Five openings show nobody: hatch, lantern …".
   *
   * @param ofMany what follows their number: "openings show nobody"
   * @param one how this one is named in the list: "hatch"
   */
  public record Alike(String ofMany, String one) {}

  /** The sentence after the panel it is about: {@code panel 6 asks for glimmer 3: …}. */
  public String inFull() {
    return (panel.isEmpty() ? "" : "panel " + panel + " ") + sentence;
  }

  /** How bad, mildest first. */
  public enum Severity {
    REMARK,
    WARNING,
    ERROR
  }

  /** Who must act. */
  public enum Concerns {
    DIRECTOR,
    ANIMATOR,
    EDITOR,
    PERFORMERS,
    COMPOSER
  }
}
