package org.barsheet.motif.find;

/**
 * A part that plays a return.
 *
 * @param part its index in the score
 * @param distance semitones from the leading part up to it; 0 for the leading part and its unisons
 */
public record Voice(int part, int distance) {}
