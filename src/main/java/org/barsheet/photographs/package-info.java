/**
 * The photographs that come out of a camera: which of the planned ones each is, and what is wrong
 * with it; entry class {@link org.barsheet.photographs.SequenceCheck}.
 */
@NullMarked
package org.barsheet.photographs;

import org.jspecify.annotations.NullMarked;
