/**
 * Which tempo and bars the film follows, and how sure that is; entry class {@link
 * org.barsheet.pulse.Music}.
 */
@NullMarked
package org.barsheet.pulse;

import org.jspecify.annotations.NullMarked;
