package org.barsheet.motif.find;

import java.util.List;
import org.barsheet.motif.match.Chain;

/**
 * A return as found: its best chain and the chains that double it from the same moment.
 *
 * @param lead the best
 * @param doublings others that begin with it, best first
 */
record Hit(Chain lead, List<Chain> doublings) {

  Hit {
    doublings = List.copyOf(doublings);
  }
}
