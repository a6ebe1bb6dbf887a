/** What moved since an earlier run; entry class {@link org.barsheet.changes.Changes}. */
@NullMarked
package org.barsheet.changes;

import org.jspecify.annotations.NullMarked;
