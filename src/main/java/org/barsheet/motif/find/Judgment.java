package org.barsheet.motif.find;

import java.util.Optional;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.match.Chain;

/** Says how much to rely on a chain. */
interface Judgment {

  /** Certain, likely or possible; empty if it is too far from its motif to count. */
  Optional<Certainty> of(Chain chain);
}
