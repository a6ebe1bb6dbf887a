package org.barsheet.received;

import org.barsheet.timing.Finding.Severity;

/**
 * Something wrong with a clip that was received, or with what one shot needs of it.
 *
 * @param severity an error where the shot cannot be cut with it
 * @param sentence what is so, with the clip's name
 * @param remedy what to do
 */
public record ClipFault(Severity severity, String sentence, String remedy) {}
