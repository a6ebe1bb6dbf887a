/** Tests of {@code org.barsheet.plan.edit.whole}. */
@NullMarked
package org.barsheet.plan.edit.whole;

import org.jspecify.annotations.NullMarked;
