/** Tests of the sound players hear. */
@NullMarked
package org.barsheet.sound;

import org.jspecify.annotations.NullMarked;
