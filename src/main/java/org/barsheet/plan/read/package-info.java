/**
 * Reads a plan: a section class for each part of it; entry class {@link
 * org.barsheet.plan.read.PlanReader}.
 */
@NullMarked
package org.barsheet.plan.read;

import org.jspecify.annotations.NullMarked;
