package org.barsheet.cli;

import java.io.PrintWriter;
import java.util.List;
import org.barsheet.changes.ChangeLine;
import org.barsheet.changes.Changes;
import org.barsheet.changes.PhotographChange.Use;

/** What moved, as it is told on a terminal. */
final class ChangesText {

  /** More than so many sentences are for the sheet. */
  private static final int MOST_SENTENCES = 12;

  private ChangesText() {}

  /** What moved since the sheets that stood in the folder, in short. */
  static void print(Changes changes, PrintWriter out) {
    if (changes.isNone()) {
      return;
    }
    List<String> sentences = changes.sentences();
    if (sentences.size() > MOST_SENTENCES) {
      sentences = changes.panelsFirst();
    }
    out.println("since the sheets made before:");
    sentences.stream().limit(MOST_SENTENCES).forEach(sentence -> out.println("  " + sentence));
    if (sentences.size() > MOST_SENTENCES) {
      out.println(
          "  and "
              + (sentences.size() - MOST_SENTENCES)
              + " more, on the workbook's sheet Changes");
    }
    out.println("  " + photographs(changes));
  }

  /** What moved, all of it. */
  static void printAll(Changes changes, PrintWriter out) {
    if (changes.isNone()) {
      out.println("Nothing moved. Every photograph is still usable.");
      return;
    }
    changes.sentences().forEach(out::println);
    for (ChangeLine line : changes.lines()) {
      if (line.kind() == ChangeLine.Kind.PHOTOGRAPHS) {
        out.println(line.name() + ": " + line.remedy());
      }
    }
    out.println(photographs(changes));
  }

  private static String photographs(Changes changes) {
    long serve = changes.count(Use.STILL_SERVES);
    return Figures.count(changes.photographs().size(), "photograph")
        + ": "
        + serve
        + " still usable, "
        + changes.count(Use.RESAMPLE)
        + " can be renamed, "
        + changes.count(Use.TAKE)
        + " must be taken, "
        + changes.count(Use.NOT_SHOWN)
        + " no longer shown";
  }
}
