/** Reads what a recording is from its file's head; entry class {@link ClipReader}. */
@NullMarked
package org.barsheet.clips;

import org.jspecify.annotations.NullMarked;
