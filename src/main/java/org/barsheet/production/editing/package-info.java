/** A plan while people edit it; entry class {@link org.barsheet.production.editing.EditedPlan}. */
@NullMarked
package org.barsheet.production.editing;

import org.jspecify.annotations.NullMarked;
