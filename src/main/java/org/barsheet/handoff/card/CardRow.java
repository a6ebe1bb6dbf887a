package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.shooting.Setup;

/**
 * A photograph to take: one row of a card.
 *
 * @param photograph the photograph of the movement, unless it is a plate of another kind
 * @param plate the plate, where it is one
 */
record CardRow(Optional<MovedPhotograph> photograph, Optional<Setup.Plate> plate) {

  /**
   * Everything to photograph in a run, in order: photograph 000, the moved ones, the other plates.
   */
  static List<CardRow> of(Setup.Run run) {
    List<CardRow> rows = new ArrayList<>();
    for (MovedPhotograph photograph : run.movement().photographs()) {
      rows.add(new CardRow(Optional.of(photograph), Optional.empty()));
    }
    for (Setup.Plate plate : run.plates()) {
      if (plate.kind() != Setup.Plate.Kind.CLOSED) {
        rows.add(new CardRow(Optional.empty(), Optional.of(plate)));
      }
    }
    return rows;
  }

  /** Cuts rows into as many cards as they need, as evenly as can be. */
  static List<List<CardRow>> cards(List<CardRow> rows, int most) {
    int cards = (rows.size() + most - 1) / most;
    List<List<CardRow>> parts = new ArrayList<>();
    int from = 0;
    for (int card = 1; card <= cards; card++) {
      int to = (int) ((long) rows.size() * card / cards);
      parts.add(rows.subList(from, to));
      from = to;
    }
    return parts;
  }
}
