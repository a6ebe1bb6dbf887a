package org.barsheet.handoff;

import org.barsheet.input.SafeFile;

/**
 * One file to hand over.
 *
 * @param path where it goes inside the folder of the sheets, with '/' between folders
 * @param content what it holds; the same film sheet gives the same bytes
 */
public record HandoffFile(String path, SafeFile.Content content) {}
