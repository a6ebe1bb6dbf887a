package org.barsheet.clips;

/** A recording whose headers say too little, or do not hold together. */
public final class UnreadableClipException extends Exception {

  private static final long serialVersionUID = 1;

  private final String remedy;

  /**
   * A recording that another one is asked for.
   *
   * @param reason in words that follow the file's name: "is cut short"
   */
  UnreadableClipException(String reason) {
    this(reason, "ask for it again");
  }

  /**
   * A recording with a remedy of its own.
   *
   * @param reason in words that follow the file's name: "is cut short"
   * @param remedy what to do about it
   */
  UnreadableClipException(String reason, String remedy) {
    super(reason);
    this.remedy = remedy;
  }

  /** In words that follow the file's name: {@code is cut short}. */
  public String reason() {
    return String.valueOf(getMessage());
  }

  /** What to do about it. */
  public String remedy() {
    return remedy;
  }
}
