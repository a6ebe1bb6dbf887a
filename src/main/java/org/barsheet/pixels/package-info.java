/**
 * Measures images pixel by pixel, and knows nothing of films; entry class {@link
 * org.barsheet.pixels.ColorImage}.
 */
@NullMarked
package org.barsheet.pixels;

import org.jspecify.annotations.NullMarked;
