/** Tests of the sound players hear. */
@NullMarked
package org.barsheet.handoff.sound;

import org.jspecify.annotations.NullMarked;
