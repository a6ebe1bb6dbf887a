/** Text for files that take little of it; entry class {@link org.barsheet.handoff.text.Ascii}. */
@NullMarked
package org.barsheet.handoff.text;

import org.jspecify.annotations.NullMarked;
