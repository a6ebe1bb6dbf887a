package org.barsheet.notation;

import org.barsheet.score.Note;

/**
 * A note as it would be written and as it was played.
 *
 * @param written on the ticks of its note values, for comparing
 * @param played as in the file, for every time that is told
 */
public record WrittenNote(Note written, Note played) {}
