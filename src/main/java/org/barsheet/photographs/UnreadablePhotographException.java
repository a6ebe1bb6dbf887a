package org.barsheet.photographs;

/** A photograph's file that cannot be used as it is. */
public final class UnreadablePhotographException extends Exception {

  private static final long serialVersionUID = 1;

  private final String remedy;

  /**
   * A file with what to do about it.
   *
   * @param reason in words that follow the file's name: "is cut short"
   * @param remedy what to do about it
   */
  UnreadablePhotographException(String reason, String remedy) {
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
