package org.barsheet.input;

/** How large the files may be that people give us; README's table of limits says the same. */
public enum Limit {

  /** A thousand times the size of a long symphony. */
  SCORE(
      "a score", 64, "name a Standard MIDI File (.mid)", "export the score again, or a part of it"),

  /** A plan of 10,000 panels has a tenth of this. */
  PLAN("a plan", 8, "name the plan", "check the file"),

  /** Panels written as text. */
  TABLE("a table of panels", 8, "name a .csv or .xlsx table", "check the file"),

  /** A plan or its panels in a spreadsheet, with its drawings. */
  WORKBOOK("a plan in a workbook", 64, "name the workbook", "remove the images from it"),

  DRAWING("a drawing", 64, "name a PNG or JPEG drawing", "save it smaller, as PNG or JPEG"),

  /** The finest JPEG of a camera of 100 million pixels has half of this. */
  PHOTOGRAPH("a photograph", 128, "name a JPEG or PNG photograph", "save it smaller, as JPEG"),

  REPORT("a report on photographs", 16, "name the report", "run barsheet photographs again"),

  NOTES(
      "a file of notes", 4, "name the file of notes", "save the notes again from the review page"),

  /** Hours of film at 60 fps on many layers. */
  TIMING("a timing.json", 256, "name a timing.json", "make the sheets again"),

  SOUND_BANK(
      "a sound bank",
      1000,
      "give a SoundFont 2 file (.sf2) or a Downloadable Sounds file (.dls) after --sound-bank",
      "give a smaller bank after --sound-bank");

  /** Pixels of a drawing: an A3 sheet scanned at 600 dots an inch has 70 million. */
  public static final long DRAWING_PIXELS = 100_000_000;

  /** Pixels of a photograph: the largest sensors have 100 million or a little more. */
  public static final long PHOTOGRAPH_PIXELS = 110_000_000;

  private static final int MEGABYTE = 1_000_000;

  private final String what;
  private final int megabytes;
  private final String wanted;
  private final String remedy;

  Limit(String what, int megabytes, String wanted, String remedy) {
    this.what = what;
    this.megabytes = megabytes;
    this.wanted = wanted;
    this.remedy = remedy;
  }

  /** What such a file holds: "a score". */
  public String what() {
    return what;
  }

  /** Most bytes of such a file. */
  public int bytes() {
    return megabytes * MEGABYTE;
  }

  /** The same in megabytes, of a million bytes each. */
  public int megabytes() {
    return megabytes;
  }

  /** What to do where something else was named. */
  public String wanted() {
    return wanted;
  }

  /** What to do where the file is too large. */
  String remedy() {
    return remedy;
  }
}
