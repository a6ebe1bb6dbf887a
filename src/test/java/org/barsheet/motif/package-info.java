/** Tests of {@link org.barsheet.motif}. */
@NullMarked
package org.barsheet.motif;

import org.jspecify.annotations.NullMarked;
