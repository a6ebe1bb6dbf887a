/** Writes a first plan; entry class {@link org.barsheet.plan.begin.PlanWriter}. */
@NullMarked
package org.barsheet.plan.begin;

import org.jspecify.annotations.NullMarked;
