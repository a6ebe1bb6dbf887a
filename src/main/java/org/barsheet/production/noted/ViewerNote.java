package org.barsheet.production.noted;

/**
 * A note that a viewer wrote on the review page.
 *
 * @param frame film frame it was written on, 0 or more
 * @param panel the panel shown then, or ""
 * @param text what it says, not empty
 */
public record ViewerNote(long frame, String panel, String text) {}
