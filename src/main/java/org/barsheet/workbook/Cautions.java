package org.barsheet.workbook;

import java.util.List;

/** The usual cautions of a shoot. They remind; they allow nothing. */
final class Cautions {

  static final List<String> ALL =
      List.of(
          "Lamps stay hot: let them cool before you touch, move or cover them. Nothing lies on a"
              + " lamp or hangs from it. Stands are weighted, curtains and people are well away.",
          "Cables: look at plugs and leads first, unroll leads fully, load no socket too much, use"
              + " a residual-current device, tape or cover what crosses a walkway, keep exits clear.",
          "Blades, wire ends, hot glue, solvents, dust: cut away from the hand, cap blades, protect"
              + " your eyes, air the room, read the maker's data sheet.",
          "Hours: rest eyes and back often, eat and drink, change posture. Nobody works alone at"
              + " night with hot lamps, and no lamp stays on unattended.",
          "Children: their hours, breaks, licenses and chaperones are set by law and differ with"
              + " place and age. Check the law and the license where each child is. This applies to"
              + " those who film at home too; a guardian decides how a recording is kept.",
          "Flashing images can cause seizures: no more than three flashes in any second (W3C,"
              + " WCAG 2.3.1). These sheets know times, not brightness: they can warn, never clear a"
              + " film. Have the finished film analyzed.",
          "These are general reminders. Local codes, the rules of the place and licensed"
              + " electricians, riggers and medics come first.");

  private Cautions() {}
}
