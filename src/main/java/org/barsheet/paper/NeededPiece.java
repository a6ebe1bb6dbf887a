package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.artwork.Piece;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Opening;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Step;

/**
 * A piece, and how often it has to be cut.
 *
 * @param piece by the name of the opening it is first used for
 * @param openings every opening it is photographed for
 * @param uses the cards it is moved or cut afresh for, in the order of work
 * @param fresh how often it is cut afresh: paper that was opened rarely closes cleanly
 */
record NeededPiece(Piece piece, List<String> openings, List<String> uses, int fresh) {

  NeededPiece {
    openings = List.copyOf(openings);
    uses = List.copyOf(uses);
  }

  String name() {
    return piece.opening().name();
  }

  /** How many to cut, the spare left out; the first of the artwork itself is part of it. */
  int count() {
    return isInArtwork() ? fresh : 1 + fresh;
  }

  private boolean isInArtwork() {
    return piece.scale().enlarged() == 1;
  }

  /** {@code cut 2 and 1 spare}. */
  String cut() {
    String first = isInArtwork() ? "the first is in the artwork; " : "";
    return first + "cut " + (count() == 0 ? "1 spare" : count() + " and 1 spare");
  }

  /** What a film needs, in the order of work. */
  static List<NeededPiece> of(FilmSheet film) {
    List<NeededPiece> needed = new ArrayList<>();
    for (Setup setup : film.shooting().setups()) {
      for (Step step : setup.steps()) {
        String use = setup.label(step.take());
        for (String opening : step.fresh()) {
          add(needed, film, List.of(opening), use, 1);
        }
        if (step.take() instanceof Setup.Run run) {
          add(needed, film, run.movement().openings(), use, 0);
        }
      }
    }
    return needed;
  }

  private static void add(
      List<NeededPiece> needed, FilmSheet film, List<String> openings, String use, int fresh) {
    Opening first = film.plan().workshop().opening(openings.get(0)).orElseThrow();
    Piece piece = Piece.of(first, film.plan().workshop().artwork());
    for (int i = 0; i < needed.size(); i++) {
      if (needed.get(i).piece().fits(piece)) {
        needed.set(i, needed.get(i).with(openings, use, fresh));
        return;
      }
    }
    needed.add(new NeededPiece(piece, openings, List.of(use), fresh));
  }

  private NeededPiece with(List<String> others, String use, int more) {
    return new NeededPiece(
        piece, joined(openings, others), joined(uses, List.of(use)), fresh + more);
  }

  private static List<String> joined(List<String> some, List<String> others) {
    List<String> all = new ArrayList<>(some);
    others.stream().filter(other -> !all.contains(other)).forEach(all::add);
    return all;
  }
}
