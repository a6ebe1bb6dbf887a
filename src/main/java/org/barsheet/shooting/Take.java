package org.barsheet.shooting;

import java.util.List;

/** What is photographed in one go: a movement with its plates, or the artwork at rest. */
public sealed interface Take permits Setup.Run, ArtworkPlate {

  /** Its permanent name. */
  String name();

  /** Permanent names of its photographs, in the order they are taken; at least one. */
  List<String> taken();

  /**
   * Openings that can be seen but do not move, and how far they stand open, in the plan's order.
   */
  List<Setup.Standing> standing();

  /** Panels that show it, in story order. */
  List<String> panels();

  /** How many photographs it takes. */
  default int photographs() {
    return taken().size();
  }
}
