package org.barsheet.motif;

import java.util.Optional;

/** Says how much to rely on a chain. */
interface Judgment {

  /** Certain, likely or possible; empty if it is too far from its motif to count. */
  Optional<Certainty> of(Chain chain);
}
