/** Tests of the files that are handed over. */
@NullMarked
package org.barsheet.handoff;

import org.jspecify.annotations.NullMarked;
