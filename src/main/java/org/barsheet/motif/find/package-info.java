/** Finds every return of every motif: what matches, merged over parts, judged and described. */
@NullMarked
package org.barsheet.motif.find;

import org.jspecify.annotations.NullMarked;
