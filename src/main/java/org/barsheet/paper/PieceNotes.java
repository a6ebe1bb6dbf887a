package org.barsheet.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.artwork.Piece;
import org.barsheet.artwork.PieceSheet;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Iris;
import org.barsheet.plan.Opening.Slides;

/** What to mind with a sheet of a piece, one sentence or two a line. */
final class PieceNotes {

  private PieceNotes() {}

  static List<String> of(Piece piece, PieceSheet sheet) {
    Opening opening = piece.opening();
    List<String> notes = new ArrayList<>();
    if (opening.motion() instanceof Hinged hinged) {
      notes.add(
          "Press the crease with a blunt edge, then cut the three sides. It opens to "
              + Millimeters.of(hinged.degrees())
              + "°.");
    } else if (opening.motion() instanceof Slides) {
      notes.add(sheet.title().equals("shutter") ? shutter(piece) : rails(piece));
    } else if (opening.motion() instanceof Iris) {
      notes.add("One frame a photograph: the shooting card has the width of each hole.");
    }
    if (sheet.title().equals("lid")) {
      notes.add("It covers the dotted hole.");
    }
    if (!opening.heldBy().isEmpty()
        && sheet.equals(piece.sheets().get(piece.sheets().size() - 1))) {
      notes.add(
          "On the back: "
              + opening.heldBy().stream()
                  .map(Opening.Support::text)
                  .collect(Collectors.joining(", then "))
              + ".");
      if (opening.heldBy().stream().anyMatch(one -> one.guideMillimeters().isPresent())) {
        notes.add("The thread leaves at the very edge: the card's pull is worked out for that.");
      }
    }
    return notes;
  }

  private static String shutter(Piece piece) {
    return "It covers the dotted hole and "
        + piece.toward()
        + "; its last edge begins flush with the hole.";
  }

  private static String rails(Piece piece) {
    return "Glue a rail along the outside of each dash-dot line. The shutter "
        + piece.toward()
        + ".";
  }
}
