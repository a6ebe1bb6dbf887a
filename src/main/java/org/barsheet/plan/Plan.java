package org.barsheet.plan;

import java.util.List;
import java.util.Optional;

/**
 * Everything the director asks for, read and checked.
 *
 * @param text where it was read from
 * @param title of the film
 * @param film settings of the film
 * @param music the score, and what is asked about its tempo and bars
 * @param motifs in the order written
 * @param workshop the artwork with its openings, and what it is photographed with
 * @param performers in the order written
 * @param clips where the performers' recordings are
 * @param delivery where the performers send their recordings, and whom they ask
 * @param panels in story order
 */
public record Plan(
    PlanText text,
    String title,
    Film film,
    MusicRequest music,
    List<MotifRequest> motifs,
    Workshop workshop,
    List<Performer> performers,
    SentClips clips,
    Delivery delivery,
    List<Panel> panels) {

  public Plan {
    motifs = List.copyOf(motifs);
    performers = List.copyOf(performers);
    panels = List.copyOf(panels);
  }

  /** The same plan with what was learned about its performers. */
  public Plan with(List<Performer> known) {
    return new Plan(text, title, film, music, motifs, workshop, known, clips, delivery, panels);
  }

  /** The same plan with other motifs. */
  public Plan withMotifs(List<MotifRequest> others) {
    return new Plan(
        text, title, film, music, others, workshop, performers, clips, delivery, panels);
  }

  /** The same plan with other panels. */
  public Plan withPanels(List<Panel> others) {
    return new Plan(
        text, title, film, music, motifs, workshop, performers, clips, delivery, others);
  }

  /** The performer of a name, if the plan has one. */
  public Optional<Performer> performer(String name) {
    return performers.stream().filter(performer -> performer.name().equals(name)).findFirst();
  }
}
