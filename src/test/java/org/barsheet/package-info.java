/** Tests of the house as a whole. */
@NullMarked
package org.barsheet;

import org.jspecify.annotations.NullMarked;
