package org.barsheet.plan.read;

import java.util.List;
import java.util.Optional;
import org.barsheet.input.Nearest;
import org.barsheet.plan.Place;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.Problems;
import org.barsheet.plan.source.Texts;

/**
 * Names that panels may use.
 *
 * @param motifs names of the motifs
 * @param openings names of the openings
 * @param performers names of the performers
 */
record Known(List<String> motifs, List<String> openings, List<String> performers) {

  /** Reports a place whose motif the plan does not have. */
  void checkMotif(PlanSection section, String key, Place place) {
    Optional<String> motif = place.motifName();
    if (motif.isPresent() && !motifs.contains(motif.get())) {
      section.problem(
          key,
          "no motif is called " + motif.get(),
          Nearest.remedy(motif.get(), motifs, "list it under motifs, or write bar 12"));
    }
  }

  /** The name of an opening; reported where there is none of that name. */
  String opening(PlanSection section) {
    return reference(section, "opening", openings, "openings");
  }

  /** The name of a performer; reported where there is none of that name. */
  String performer(PlanSection section) {
    return reference(section, "performer", performers, "performers");
  }

  /** Reports a performer the plan does not have. */
  void checkPerformer(String name, Where where, Problems problems) {
    if (!performers.contains(name)) {
      problems.add(
          where,
          "no performer is called " + name,
          Nearest.remedy(name, performers, "list it under performers"));
    }
  }

  private static String reference(
      PlanSection section, String key, List<String> known, String sectionName) {
    String name = section.need(key, "", "known here: " + String.join(", ", known), Texts::plain);
    if (!name.isEmpty() && !known.contains(name)) {
      section.problem(
          key,
          "no " + key + " is called " + name,
          Nearest.remedy(name, known, "list it under " + sectionName));
    }
    return name;
  }
}
