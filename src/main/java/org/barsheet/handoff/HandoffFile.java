package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;

/**
 * One file to hand over.
 *
 * @param path where it goes inside the folder of the sheets, with '/' between folders
 * @param content what it holds; the same film sheet gives the same bytes
 */
public record HandoffFile(String path, Content content) {

  /** What a file is to hold, written from front to back. */
  @FunctionalInterface
  public interface Content {

    /**
     * Writes all of it; the stream is buffered and closed by the caller.
     *
     * @throws IOException if the stream does not take it
     */
    void writeTo(OutputStream out) throws IOException;
  }
}
