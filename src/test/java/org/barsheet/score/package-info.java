/** Tests of reading scores, with files made here byte by byte. */
@NullMarked
package org.barsheet.score;

import org.jspecify.annotations.NullMarked;
