package org.barsheet.motif;

/** How a return of a motif is changed against the motif itself. */
public enum Form {
  AS_GIVEN("as given"),
  TRANSPOSED("transposed"),
  TONAL("tonal"),
  INVERTED("inverted"),
  RETROGRADE("retrograde"),
  AUGMENTED("augmented"),
  DIMINISHED("diminished"),
  ORNAMENTED("ornamented"),
  SHORTENED("shortened");

  private final String word;

  Form(String word) {
    this.word = word;
  }

  /** The word used in plans and on sheets. */
  public String word() {
    return word;
  }
}
