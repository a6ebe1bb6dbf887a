/** Beats and bars of music played freely. */
@NullMarked
package org.barsheet.pulse.free;

import org.jspecify.annotations.NullMarked;
