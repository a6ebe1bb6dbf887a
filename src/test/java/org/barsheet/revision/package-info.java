/** Tests of tempo, bars and beats. */
@NullMarked
package org.barsheet.revision;

import org.jspecify.annotations.NullMarked;
