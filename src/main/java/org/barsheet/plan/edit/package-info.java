/**
 * Changes single values in a plan's files and nothing else; entry class {@link
 * org.barsheet.plan.edit.PlanEdits}.
 */
@NullMarked
package org.barsheet.plan.edit;

import org.jspecify.annotations.NullMarked;
