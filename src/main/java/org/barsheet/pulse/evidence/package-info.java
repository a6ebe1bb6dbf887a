/** What the notes themselves say of beats and bars: strokes, harmony, concentration, meters. */
@NullMarked
package org.barsheet.pulse.evidence;

import org.jspecify.annotations.NullMarked;
