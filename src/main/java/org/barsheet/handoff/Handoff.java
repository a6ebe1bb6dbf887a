package org.barsheet.handoff;

import java.util.List;
import org.barsheet.exposure.FilmSheet;

/** Every file that is handed over, by name. */
public final class Handoff {

  private Handoff() {}

  /**
   * The files without the sound.
   *
   * @param sheet what they are printed from
   * @param name the plan's file name without extension, first part of their names
   */
  public static List<HandoffFile> documents(FilmSheet sheet, String name) {
    return List.of(
        new HandoffFile("timing.json", out -> TimingJson.write(sheet, out)),
        new HandoffFile(name + "-cues.csv", out -> CuesCsv.write(sheet, out)),
        new HandoffFile(name + "-cues.vtt", out -> out.write(CuesVtt.bytes(sheet))),
        new HandoffFile(name + "-chapters.vtt", out -> out.write(ChaptersVtt.bytes(sheet))));
  }
}
