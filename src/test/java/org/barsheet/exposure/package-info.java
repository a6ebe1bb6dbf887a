/** Photographs of a reveal, frame by frame. */
@NullMarked
package org.barsheet.exposure;

import org.jspecify.annotations.NullMarked;
