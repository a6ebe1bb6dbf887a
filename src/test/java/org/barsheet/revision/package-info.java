/** Tests of versions of a score. */
@NullMarked
package org.barsheet.revision;

import org.jspecify.annotations.NullMarked;
