package org.barsheet.cues;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.input.Nearest;
import org.barsheet.input.Problem;
import org.barsheet.motif.Occurrence;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.Anywhere;
import org.barsheet.plan.Place.IntoPanel;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Where;
import org.barsheet.pulse.Music;

/** Tells where single places are, apart from any panel. */
public final class Places {

  private Places() {}

  /**
   * The moments each place means, in the order asked; "any glimmer" means each of its returns.
   *
   * @throws InputException with every place that cannot be found, or that means something only
   *     between panels
   */
  public static List<Cue> find(
      Plan plan, Music music, List<Occurrence> occurrences, List<Place> places) {
    FilmClock clock = FilmClock.of(plan.film(), music);
    MusicRuler ruler = new MusicRuler(music, clock);
    Seconds end = music.lastSoundingBarEnd().plus(plan.film().tail());
    Cues cues = new Cues(music, ruler, occurrences);
    PlaceResolver resolver = new PlaceResolver(music, plan.film(), clock, cues, clock.frameAt(end));
    List<Cue> found = new ArrayList<>();
    for (Place place : places) {
      Where asked = new Where("'" + place + "'", "");
      if (place instanceof Anywhere || place instanceof IntoPanel) {
        resolver.refuse(
            asked,
            "this place depends on the panels around it",
            "ask for a panel, a motif, a bar, a mark or a timecode");
      } else if (place.motifName().filter(name -> !hasMotif(plan, name)).isPresent()) {
        String name = place.motifName().get();
        resolver.refuse(asked, "no motif is called " + name, otherName(plan, name));
      } else {
        found.addAll(resolver.resolve(place, asked));
      }
    }
    List<Problem> problems = resolver.problems();
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return List.copyOf(found);
  }

  private static String otherName(Plan plan, String name) {
    List<String> motifs = plan.motifs().stream().map(MotifRequest::name).toList();
    return Nearest.to(name, motifs)
        .map(near -> "did you mean " + near + "?")
        .orElse(
            Nearest.remedy(name, motifs, "the plan has none")
                + "; a bar is written bar 12, a mark is written mark B");
  }

  private static boolean hasMotif(Plan plan, String name) {
    return plan.motifs().stream().anyMatch(motif -> motif.name().equals(name));
  }
}
