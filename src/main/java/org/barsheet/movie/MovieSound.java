package org.barsheet.movie;

import java.nio.file.Path;

/**
 * A sound that is laid under a movie.
 *
 * @param file what ffmpeg reads
 * @param skip samples at 48 kHz of it that come before the movie's first frame; negative where it
 *     begins so much later
 */
public record MovieSound(Path file, long skip) {}
