package org.barsheet.align.places;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.Cues;
import org.barsheet.cues.FilmClock;
import org.barsheet.cues.MusicRuler;
import org.barsheet.cues.PlaceResolver;
import org.barsheet.plan.Film;
import org.barsheet.plan.Panel;

/**
 * What the aligner works on.
 *
 * @param panels in story order, at least one
 * @param film settings of the film
 * @param clock ties music and film
 * @param ruler measures one against the other
 * @param cues the moments of the music
 * @param places finds the places that panels name
 * @param freePlaces beats that a panel that names no place may sit on, in order of frame
 * @param filmFrames length of the film, more than 0
 * @param kept what an earlier sheet laid down that must not move
 */
public record AlignerInput(
    List<Panel> panels,
    Film film,
    FilmClock clock,
    MusicRuler ruler,
    Cues cues,
    PlaceResolver places,
    List<Candidate> freePlaces,
    long filmFrames,
    Kept kept) {

  /** The same without the frames that reveals must keep. */
  public AlignerInput keepingShots() {
    Kept shots = new Kept(kept.shots(), List.of());
    return new AlignerInput(
        panels, film, clock, ruler, cues, places, freePlaces, filmFrames, shots);
  }

  /** The frames a panel must keep, if it is locked and an earlier sheet says where it was. */
  public Optional<FrameSpan> lockOf(Panel panel) {
    return kept.lockOf(panel);
  }

  /** Frames a panel has on average. */
  public double meanLength() {
    return (double) filmFrames / panels.size();
  }
}
