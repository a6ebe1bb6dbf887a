/**
 * Puts files into a folder all at once or not at all; start with {@link
 * org.barsheet.production.publish.OutputFolder}.
 */
@NullMarked
package org.barsheet.production.publish;

import org.jspecify.annotations.NullMarked;
