/** Simple drawings for photographs still to take; entry class {@link Canvas}. */
@NullMarked
package org.barsheet.handoff.drawing;

import org.jspecify.annotations.NullMarked;
