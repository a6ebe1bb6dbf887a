package org.barsheet.ticks;

/** What somebody said of a photograph. */
public enum Mark {
  /** It is taken. */
  TAKEN("taken"),
  /** It was struck: it has to be taken again. */
  AGAIN("again");

  private final String word;

  Mark(String word) {
    this.word = word;
  }

  /** As people and files say it. */
  public String word() {
    return word;
  }
}
