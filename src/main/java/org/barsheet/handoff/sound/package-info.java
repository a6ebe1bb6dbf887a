/** The sound players hear; entry class {@link org.barsheet.handoff.sound.SoundFiles}. */
@NullMarked
package org.barsheet.handoff.sound;

import org.jspecify.annotations.NullMarked;
