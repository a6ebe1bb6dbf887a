/**
 * The plan made in a browser: a server on this machine alone that shows the review page of a plan,
 * changes the plan for it, and lays the film anew after every change.
 */
@NullMarked
package org.barsheet.desk;

import org.jspecify.annotations.NullMarked;
