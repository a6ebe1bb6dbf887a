package org.barsheet.workbook;

import java.util.List;

/** The usual cautions of a shoot. They remind; they allow nothing. */
final class Cautions {

  static final List<String> ALL =
      List.of(
          "Lamps stay hot: let them cool before you touch, move or cover them. Lay or hang"
              + " nothing on a lamp. Weight all lamp stands; keep curtains and people well away.",
          "Cables: check plugs and cords first, unroll cords fully, don't overload an outlet, use a"
              + " GFCI (residual-current device), tape or cover what crosses a walkway, keep exits clear.",
          "Blades, wire ends, hot glue, solvents, dust: cut away from your hand, cap blades,"
              + " protect your eyes, air out the room, read the maker's safety data sheet.",
          "Hours: rest your eyes and back often, eat and drink, change posture. Nobody works alone at"
              + " night with hot lamps, and no lamp stays on unattended.",
          "Children: their hours, breaks, licenses and chaperones are set by law and differ by"
              + " place and age. Check the law, and whether a license is needed, where each child is."
              + " This includes filming at home; a guardian decides how a recording is kept.",
          "Flashing images can cause seizures: no more than three flashes in any second (W3C,"
              + " WCAG 2.3.1). These sheets know times, not brightness: they can warn, never clear a"
              + " film. Have the finished film analyzed.",
          "These are general reminders. Local codes, the rules of the place and licensed"
              + " electricians, riggers and medics come first.");

  private Cautions() {}
}
