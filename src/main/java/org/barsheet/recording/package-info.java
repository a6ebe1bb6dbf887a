/**
 * What is heard in a recording: its samples, its onsets, and where it lies against another. Entry
 * classes {@link SoundReader} and {@link Placement}.
 */
@NullMarked
package org.barsheet.recording;

import org.jspecify.annotations.NullMarked;
