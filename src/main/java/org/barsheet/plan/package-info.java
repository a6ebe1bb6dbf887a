/** What the director asks for; entry class {@link org.barsheet.plan.PlanReader}. */
@NullMarked
package org.barsheet.plan;

import org.jspecify.annotations.NullMarked;
