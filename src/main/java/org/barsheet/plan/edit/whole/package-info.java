/**
 * Edits of a plan that concern several of its places at once; entry class {@link
 * org.barsheet.plan.edit.whole.NewName}.
 */
@NullMarked
package org.barsheet.plan.edit.whole;

import org.jspecify.annotations.NullMarked;
