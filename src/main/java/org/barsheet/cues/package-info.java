/** Places of the music on the frames of the film; entry class {@link org.barsheet.cues.Cues}. */
@NullMarked
package org.barsheet.cues;

import org.jspecify.annotations.NullMarked;
