/** Where named motifs return; entry class {@link org.barsheet.motif.OccurrenceFinder}. */
@NullMarked
package org.barsheet.motif;

import org.jspecify.annotations.NullMarked;
