package org.barsheet.plan;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.clock.Seconds;

/**
 * The production's own recording of the music.
 *
 * @param file the sound file, resolved against the plan's folder
 * @param starts when its first sample is heard, from film frame 0, negative before it; empty where
 *     the plan does not say: at the score's second 0, from which pins count
 * @param where its place in the plan, for messages
 */
public record Recording(Path file, Optional<Seconds> starts, Where where) {}
