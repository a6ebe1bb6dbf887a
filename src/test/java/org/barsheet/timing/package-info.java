/** Panels on cues, cues on frames. */
@NullMarked
package org.barsheet.timing;

import org.jspecify.annotations.NullMarked;
