/**
 * Everything to photograph, in the order of work; entry class {@link
 * org.barsheet.shooting.ShootingPlan}.
 */
@NullMarked
package org.barsheet.shooting;

import org.jspecify.annotations.NullMarked;
