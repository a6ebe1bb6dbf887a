/**
 * What has come of the performers' clips, held against what the film needs of them; entry class
 * {@link org.barsheet.received.ClipVerdict}.
 */
@NullMarked
package org.barsheet.received;

import org.jspecify.annotations.NullMarked;
