/** Tests of the drawings for photographs still to take. */
@NullMarked
package org.barsheet.handoff.drawing;

import org.jspecify.annotations.NullMarked;
