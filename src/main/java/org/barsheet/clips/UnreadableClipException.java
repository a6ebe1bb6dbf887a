package org.barsheet.clips;

/** A recording whose headers say too little, or do not hold together. */
public final class UnreadableClipException extends Exception {

  private static final long serialVersionUID = 1;

  /**
   * @param reason in words that follow the file's name: "is cut short"
   */
  UnreadableClipException(String reason) {
    super(reason);
  }

  /** In words that follow the file's name: {@code is cut short}. */
  public String reason() {
    return String.valueOf(getMessage());
  }
}
