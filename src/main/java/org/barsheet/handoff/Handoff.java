package org.barsheet.handoff;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.FileNames;
import org.barsheet.film.FilmSheet;
import org.barsheet.sound.BankGuide;
import org.barsheet.sound.SoundFiles;

/** Every file that is handed over, by name. */
public final class Handoff {

  private Handoff() {}

  /**
   * The files without the sound: they are quick to write.
   *
   * @param sheet what they are printed from
   * @param name the plan's file name without extension, first part of their names
   */
  public static List<HandoffFile> documents(FilmSheet sheet, String name) {
    List<HandoffFile> files = new ArrayList<>();
    files.add(file("timing.json", out -> TimingJson.write(sheet, out)));
    files.add(file(name + "-cues.csv", out -> CuesCsv.write(sheet, out)));
    files.add(file(name + "-cues.vtt", out -> out.write(CuesVtt.bytes(sheet))));
    files.add(file(name + "-chapters.vtt", out -> out.write(ChaptersVtt.bytes(sheet))));
    files.add(file(name + "-cues.mid", out -> CuesMidi.write(sheet, out)));
    files.add(file(name + "-frames.csv", out -> FramesCsv.write(sheet, out)));
    files.add(file(name + "-inserts.csv", out -> InsertsCsv.write(sheet, out)));
    files.add(file(name + ".otio", out -> OtioTimeline.write(sheet, FileNames.guide(name), out)));
    files.addAll(editDecisionLists(sheet, name));
    files.add(file(name + "-artwork.svg", out -> out.write(ArtworkSvg.bytes(sheet))));
    files.addAll(CallSheets.files(sheet));
    files.addAll(CardFiles.files(sheet, name));
    files.addAll(Mattes.files(sheet));
    return files;
  }

  /**
   * The sound files: tens of megabytes, seconds to write.
   *
   * @param sheet what they are printed from
   * @param name the plan's file name without extension, first part of their names
   */
  public static List<HandoffFile> sound(FilmSheet sheet, String name) {
    return List.of(
        file(FileNames.click(name), out -> SoundFiles.writeClick(sheet, out)),
        file(FileNames.guide(name), out -> SoundFiles.writeGuide(sheet, out)));
  }

  /** The same with the guide played with the sounds of a bank. */
  public static List<HandoffFile> sound(FilmSheet sheet, String name, BankGuide guide) {
    return List.of(
        file(FileNames.click(name), out -> SoundFiles.writeClick(sheet, out)),
        file(FileNames.guide(name), out -> SoundFiles.writeGuide(guide, out)));
  }

  /**
   * What is printed on paper at true size, and cut: every page as a drawing, all of them as PDF.
   *
   * @param sheet what they are printed from
   * @param name the plan's file name without extension, first part of the name of the whole
   */
  public static List<HandoffFile> paper(FilmSheet sheet, String name) {
    return PaperFiles.files(sheet, name);
  }

  private static HandoffFile file(String path, HandoffFile.Content content) {
    return new HandoffFile(path, content);
  }

  /** {@code name.edl}, and where one list does not hold all shots {@code name-2.edl} … */
  private static List<HandoffFile> editDecisionLists(FilmSheet sheet, String name) {
    List<HandoffFile> files = new ArrayList<>();
    List<byte[]> lists = EditDecisionList.lists(sheet);
    for (int i = 0; i < lists.size(); i++) {
      byte[] list = lists.get(i);
      files.add(file(name + (i == 0 ? "" : "-" + (i + 1)) + ".edl", out -> out.write(list)));
    }
    return files;
  }
}
