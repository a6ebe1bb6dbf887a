package org.barsheet.sound;

/**
 * A named moment of a sound file.
 *
 * @param sample its sample in the file
 * @param label what it is
 */
record CuePoint(long sample, String label) {}
