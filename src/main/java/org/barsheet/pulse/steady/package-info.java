/** Readings of music played to a steady pulse. */
@NullMarked
package org.barsheet.pulse.steady;

import org.jspecify.annotations.NullMarked;
