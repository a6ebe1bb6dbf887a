package org.barsheet.frames;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.artwork.PhotographCrop;
import org.barsheet.plan.Performer;

/**
 * An opening on one frame. Its hole lies over the plate, the performers lie in the hole, and what
 * covers the hole lies over them.
 *
 * @param shape how it is drawn
 * @param amount how far it stands open, in its movement's unit
 * @param asDrawn whether the drawing behind shows it so already
 * @param shown the photograph that shows it, where it moves in the shot
 * @param inserts who is seen in it
 */
public record SeenOpening(
    OpeningShape shape,
    double amount,
    boolean asDrawn,
    Optional<Shown> shown,
    List<Insert> inserts) {

  public SeenOpening {
    inserts = List.copyOf(inserts);
  }

  /** What covers it. */
  public Cover cover() {
    return shape.coverAt(amount);
  }

  /**
   * A photograph of a reveal.
   *
   * @param photograph its permanent name
   * @param layer of its reveal, from 1
   * @param part the part of it that fills the frame; empty where the panel does not say what the
   *     camera sees
   */
  public record Shown(String photograph, int layer, Optional<PhotographCrop> part) {}

  /**
   * A performer's clip.
   *
   * @param performer whose
   * @param clipFrame frame of the clip, from 0; empty where its rate or its clap are not known
   */
  public record Insert(Performer performer, OptionalLong clipFrame) {}
}
