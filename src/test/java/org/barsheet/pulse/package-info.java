/** Tests of tempo, bars and beats. */
@NullMarked
package org.barsheet.pulse;

import org.jspecify.annotations.NullMarked;
