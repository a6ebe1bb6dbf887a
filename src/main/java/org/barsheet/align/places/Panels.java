package org.barsheet.align.places;

import java.util.List;
import java.util.Optional;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Reveal;

/** Panels that differ from the plan's in one thing, to see whether that would help. */
public final class Panels {

  private Panels() {}

  public static Panel with(Panel panel, Place cue, Optional<Length> length, List<Reveal> reveals) {
    return new Panel(
        panel.name(),
        panel.action(),
        cue,
        panel.cut(),
        length,
        panel.field(),
        panel.drawing(),
        reveals,
        panel.appears(),
        panel.locked(),
        panel.where());
  }

  /** The same on another place. */
  public static Panel at(Place cue, Panel panel) {
    return with(panel, cue, panel.length(), panel.reveals());
  }

  /** The same with every photograph yet to be taken. */
  public static Panel unphotographed(Panel panel) {
    List<Reveal> reveals = panel.reveals().stream().map(Reveal::unphotographed).toList();
    return with(panel, panel.cue(), panel.length(), reveals);
  }

  /** A reveal with another number of photographs, each shown for one frame. */
  public static Reveal onOnes(Reveal reveal, int photographs) {
    return new Reveal(
        reveal.opening(),
        reveal.way(),
        photographs,
        1,
        reveal.slow(),
        reveal.evenIn(),
        reveal.lands(),
        reveal.landsOn(),
        Optional.empty(),
        reveal.taken(),
        reveal.where());
  }
}
