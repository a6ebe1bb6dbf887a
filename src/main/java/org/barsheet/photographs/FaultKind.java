package org.barsheet.photographs;

/** What can be wrong with a photograph. */
public enum FaultKind {
  CAMERA("camera", false),
  LIGHT("light", false),
  COLOR("color", false),
  STEP("step", true),
  OBJECT("object", true),
  SHADOW("shadow", true),
  BACKING("backing", true),
  FOCUS("focus", true),
  CLIPPED("clipped", true),
  SIZE("size", true),
  OTHER_CAMERA("settings", false),
  UNREADABLE("unreadable", true);

  private final String word;
  private final boolean again;

  FaultKind(String word, boolean again) {
    this.word = word;
    this.again = again;
  }

  /** The word that marks it in lists. */
  public String word() {
    return word;
  }

  /** Whether nothing but taking it again helps: shift and light can be evened. */
  public boolean again() {
    return again;
  }
}
