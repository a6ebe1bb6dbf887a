/** Tests of {@link org.barsheet.suggestions}. */
@NullMarked
package org.barsheet.suggestions;

import org.jspecify.annotations.NullMarked;
