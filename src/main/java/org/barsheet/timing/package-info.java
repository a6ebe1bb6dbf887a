/** Panels on cues, cues on frames; entry class {@link org.barsheet.timing.TimingSheet}. */
@NullMarked
package org.barsheet.timing;

import org.jspecify.annotations.NullMarked;
