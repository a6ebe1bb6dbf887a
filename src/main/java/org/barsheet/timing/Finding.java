package org.barsheet.timing;

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
 * @param remedy what to do, or "" for a plain note
 */
public record Finding(
    Severity severity,
    Concerns concerns,
    String panel,
    String place,
    OptionalLong frame,
    String sentence,
    String remedy) {

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
