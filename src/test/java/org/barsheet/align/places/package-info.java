@NullMarked
package org.barsheet.align.places;

import org.jspecify.annotations.NullMarked;
