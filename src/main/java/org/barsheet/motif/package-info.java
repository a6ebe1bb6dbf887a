/** What a motif is, and a return of it. */
@NullMarked
package org.barsheet.motif;

import org.jspecify.annotations.NullMarked;
