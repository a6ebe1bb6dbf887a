/**
 * When every beat of a score sounds in a recording of it; entry class {@link RecordingFollower}.
 */
@NullMarked
package org.barsheet.follow;

import org.jspecify.annotations.NullMarked;
