/** What the director asks for: the model of a plan; entry class {@link org.barsheet.plan.Plan}. */
@NullMarked
package org.barsheet.plan;

import org.jspecify.annotations.NullMarked;
