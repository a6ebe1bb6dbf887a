/**
 * How photographs of a reveal fall on frames; entry class {@link
 * org.barsheet.exposure.RevealPlanner}.
 */
@NullMarked
package org.barsheet.exposure;

import org.jspecify.annotations.NullMarked;
