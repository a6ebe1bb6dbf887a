/** Tests of {@link org.barsheet.notation}. */
@NullMarked
package org.barsheet.notation;

import org.jspecify.annotations.NullMarked;
