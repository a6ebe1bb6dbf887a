/** The music as written in the file; entry class {@link org.barsheet.score.ScoreReader}. */
@NullMarked
package org.barsheet.score;

import org.jspecify.annotations.NullMarked;
