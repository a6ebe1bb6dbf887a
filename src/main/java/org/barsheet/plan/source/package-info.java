/**
 * The text of a plan as a tree of keys and values that know where they stand; entry class {@link
 * org.barsheet.plan.source.Entry}.
 */
@NullMarked
package org.barsheet.plan.source;

import org.jspecify.annotations.NullMarked;
