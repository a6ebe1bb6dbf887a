/** The editor's and the performers' files; entry class {@link org.barsheet.handoff.Handoff}. */
@NullMarked
package org.barsheet.handoff;

import org.jspecify.annotations.NullMarked;
