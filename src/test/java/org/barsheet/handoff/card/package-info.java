/** Tests of cards and gauges. */
@NullMarked
package org.barsheet.handoff.card;

import org.jspecify.annotations.NullMarked;
