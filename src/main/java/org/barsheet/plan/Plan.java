package org.barsheet.plan;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.barsheet.pulse.TempoRequest;

/**
 * Everything the director asks for, read and checked.
 *
 * @param file where it was read from
 * @param title of the film
 * @param score the MIDI file, resolved against the plan's folder
 * @param film settings of the film
 * @param music what is asked about tempo and bars
 * @param recording of the music, where the plan names one
 * @param motifs in the order written
 * @param artwork the whole physical picture and its models
 * @param camera lens, sensor and picture size, where given
 * @param shoot the director's own rates of work, where given
 * @param hand what the animator's hand can set
 * @param openings in the order written
 * @param performers in the order written
 * @param clips where the performers' recordings are
 * @param panels in story order
 * @param given the settings the plan states itself ({@code film.tail}); all others are defaults
 * @param notes what was set aside or assumed while reading: an unknown column of a table, say
 * @param table the panels' own file, where they stand in one
 */
public record Plan(
    Path file,
    String title,
    Path score,
    Film film,
    TempoRequest music,
    Optional<Recording> recording,
    List<MotifRequest> motifs,
    Artwork artwork,
    Optional<Camera> camera,
    Optional<Shoot> shoot,
    Hand hand,
    List<Opening> openings,
    List<Performer> performers,
    SentClips clips,
    List<Panel> panels,
    Set<String> given,
    List<PlanNote> notes,
    Optional<Path> table) {

  public Plan {
    motifs = List.copyOf(motifs);
    openings = List.copyOf(openings);
    performers = List.copyOf(performers);
    panels = List.copyOf(panels);
    given = Collections.unmodifiableSet(new TreeSet<>(given));
    notes = List.copyOf(notes);
  }

  /** The same plan with what was learned about its performers. */
  public Plan with(List<Performer> known) {
    return new Plan(
        file, title, score, film, music, recording, motifs, artwork, camera, shoot, hand, openings,
        known, clips, panels, given, notes, table);
  }

  /** The opening of a name, if the plan has it. */
  public Optional<Opening> opening(String name) {
    return openings.stream().filter(opening -> opening.name().equals(name)).findFirst();
  }

  /** The performer of a name, if the plan has one. */
  public Optional<Performer> performer(String name) {
    return performers.stream().filter(performer -> performer.name().equals(name)).findFirst();
  }
}
