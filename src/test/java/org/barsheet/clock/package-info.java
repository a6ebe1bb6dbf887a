/** Tests of time, frames and timecode against published values. */
@NullMarked
package org.barsheet.clock;

import org.jspecify.annotations.NullMarked;
