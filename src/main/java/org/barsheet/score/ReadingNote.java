package org.barsheet.score;

/**
 * Something odd in a score file that did not keep it from being read.
 *
 * @param byteOffset where in the file, from 0
 * @param sentence what is odd and what was done about it, without a closing full stop
 * @param musicLost whether notes may be missing: bytes were left out, or the file ends too early
 */
public record ReadingNote(long byteOffset, String sentence, boolean musicLost) {}
