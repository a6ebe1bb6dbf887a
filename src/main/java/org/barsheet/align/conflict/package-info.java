/** What cannot be together in a plan: the smallest conflicts, and what settles each. */
@NullMarked
package org.barsheet.align.conflict;

import org.jspecify.annotations.NullMarked;
