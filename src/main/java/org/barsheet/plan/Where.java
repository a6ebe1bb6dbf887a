package org.barsheet.plan;

/**
 * A place in the plan's own files, for messages.
 *
 * @param file the file as the person named it
 * @param position "line 12", "sheet Panels, cell C4", or "" where it is a default
 */
public record Where(String file, String position) {}
