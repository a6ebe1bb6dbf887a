/**
 * Sizes on the paper artwork and in the camera's photograph; entry class {@link
 * org.barsheet.artwork.Measure}.
 */
@NullMarked
package org.barsheet.artwork;

import org.jspecify.annotations.NullMarked;
