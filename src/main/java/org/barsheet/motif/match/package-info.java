/** Where notes of a score follow each other as those of a motif do, and how well. */
@NullMarked
package org.barsheet.motif.match;

import org.jspecify.annotations.NullMarked;
