package org.barsheet.timing;

import java.util.List;
import java.util.Optional;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Reveal;

/** Panels that differ from the plan's in one thing, to see whether that would help. */
final class Panels {

  private Panels() {}

  static Panel with(Panel panel, Place cue, Optional<Length> length, List<Reveal> reveals) {
    return new Panel(
        panel.name(),
        panel.action(),
        cue,
        panel.cut(),
        length,
        panel.field(),
        panel.picture(),
        reveals,
        panel.appears(),
        panel.locked(),
        panel.where());
  }

  /** A reveal with another number of pictures, each shown for one frame. */
  static Reveal onOnes(Reveal reveal, int pictures) {
    return new Reveal(
        reveal.opening(),
        reveal.way(),
        pictures,
        1,
        reveal.slow(),
        reveal.evenIn(),
        reveal.lands(),
        reveal.landsOn(),
        reveal.photographed(),
        reveal.where());
  }
}
