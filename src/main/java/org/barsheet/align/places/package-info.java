/**
 * Where panels may begin and end, what each place costs, and which room their reveals need there.
 */
@NullMarked
package org.barsheet.align.places;

import org.jspecify.annotations.NullMarked;
