package org.barsheet.motif;

/** How much a find may be relied upon. */
public enum Certainty {
  /** Right, as a trained listener would say. */
  CERTAIN,
  /** Probably right; shown as a question. */
  LIKELY,
  /** Ornamented or shortened beyond what can be told from chance; off unless asked. */
  POSSIBLE
}
