package org.barsheet.revision;

/**
 * A note as its bar holds it, for finding the bar again.
 *
 * @param at when it begins, in {@linkplain ScoreNotes#UNITS units} from the bar's start
 * @param pitch MIDI key, 0 to 127
 */
public record BarNote(long at, int pitch) {}
