@NullMarked
package org.barsheet.pixels;

import org.jspecify.annotations.NullMarked;
