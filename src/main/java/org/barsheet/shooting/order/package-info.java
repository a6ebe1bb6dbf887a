/**
 * The order in which things are photographed, from what each asks of paper and camera; entry class
 * {@link org.barsheet.shooting.order.WorkOrder}.
 */
@NullMarked
package org.barsheet.shooting.order;

import org.jspecify.annotations.NullMarked;
