/** Tests of reading what recordings say of themselves. */
@NullMarked
package org.barsheet.clips;

import org.jspecify.annotations.NullMarked;
