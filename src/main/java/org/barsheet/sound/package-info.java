/** The sound performers hear; entry class {@link org.barsheet.sound.SoundFiles}. */
@NullMarked
package org.barsheet.sound;

import org.jspecify.annotations.NullMarked;
