/** Exact time and film frames, no music; entry class {@link org.barsheet.clock.FrameRate}. */
@NullMarked
package org.barsheet.clock;

import org.jspecify.annotations.NullMarked;
