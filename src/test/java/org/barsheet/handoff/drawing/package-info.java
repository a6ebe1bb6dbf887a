/** Tests of the drawings for pictures still to take. */
@NullMarked
package org.barsheet.handoff.drawing;

import org.jspecify.annotations.NullMarked;
