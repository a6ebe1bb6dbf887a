package org.barsheet.align.places;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Reveal;

/**
 * What an earlier sheet laid down that must not move any more.
 *
 * @param shots frames of shots, by panel name: a locked panel keeps its own
 * @param reveals of panels: a photographed one, or one in a locked panel, keeps its frames
 */
public record Kept(Map<String, FrameSpan> shots, List<Run> reveals) {

  /** Where there is no earlier sheet. */
  public static final Kept NOTHING = new Kept(Map.of(), List.of());

  public Kept {
    shots = Map.copyOf(shots);
    reveals = List.copyOf(reveals);
  }

  /**
   * Frames of a reveal of an earlier sheet.
   *
   * @param panel name of its panel
   * @param opening what moves
   * @param firstFrame film frame of its first moved photograph
   * @param landsFrame film frame of its landing photograph
   */
  public record Run(String panel, String opening, long firstFrame, long landsFrame) {}

  /** The frames a panel must keep, if it is locked and the earlier sheet says where it was. */
  public Optional<FrameSpan> lockOf(Panel panel) {
    return panel.locked() ? Optional.ofNullable(shots.get(panel.name())) : Optional.empty();
  }

  /**
   * The frames a reveal must keep if it is photographed or its panel locked; more than one where
   * its opening moves again in its panel.
   */
  public List<Run> runsOf(Panel panel, Reveal reveal) {
    return reveal.photographed() || panel.locked()
        ? reveals.stream()
            .filter(
                run -> run.panel().equals(panel.name()) && run.opening().equals(reveal.opening()))
            .toList()
        : List.of();
  }
}
