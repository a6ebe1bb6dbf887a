/** Text for files with rules of their own about it; entry class {@link org.barsheet.text.Html}. */
@NullMarked
package org.barsheet.text;

import org.jspecify.annotations.NullMarked;
