/** Tests of the package of the same name. */
@NullMarked
package org.barsheet.production;

import org.jspecify.annotations.NullMarked;
