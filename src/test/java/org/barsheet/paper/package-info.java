/** Tests of what is printed on paper. */
@NullMarked
package org.barsheet.paper;

import org.jspecify.annotations.NullMarked;
