/** Tests of {@code org.barsheet.production.editing}. */
@NullMarked
package org.barsheet.production.editing;

import org.jspecify.annotations.NullMarked;
