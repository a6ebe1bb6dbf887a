/** Tests of {@code org.barsheet.production.publish}. */
@NullMarked
package org.barsheet.production.publish;

import org.jspecify.annotations.NullMarked;
