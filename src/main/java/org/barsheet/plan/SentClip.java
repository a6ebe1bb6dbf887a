package org.barsheet.plan;

import java.nio.file.Path;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;

/**
 * A recording that came, as the plan's table of clips tells of it.
 *
 * @param performer who sent it
 * @param file where it is, resolved against the plan's folder
 * @param rate fps its sender says it has
 * @param start of its first frame or sample, from the music's start, negative before it
 * @param note what else was told
 * @param where its place in the plan, for messages
 */
public record SentClip(
    String performer,
    Path file,
    Optional<FrameRate> rate,
    Optional<Seconds> start,
    String note,
    Where where) {}
