/** Tests of the package of the same name. */
@NullMarked
package org.barsheet.cli;

import org.jspecify.annotations.NullMarked;
