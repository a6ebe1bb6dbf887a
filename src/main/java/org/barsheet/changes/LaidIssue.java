package org.barsheet.changes;

/**
 * A run that was sent out under a name.
 *
 * @param name as {@code make --issue} was told
 * @param film what that run laid down, without issues of its own
 */
public record LaidIssue(String name, LaidFilm film) {}
