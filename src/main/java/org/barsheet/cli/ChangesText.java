package org.barsheet.cli;

import java.io.PrintWriter;
import java.util.List;
import org.barsheet.changes.Changes;
import org.barsheet.changes.PhotographChange.Use;
import org.barsheet.changes.Told;

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
    List<String> performers =
        changes.seen().stream().map(seen -> seen.seen().performer()).distinct().toList();
    if (!performers.isEmpty()) {
      out.println("  tell " + String.join(", ", performers) + ": their appearances changed");
    }
  }

  /** What moved, all of it. */
  static void printAll(Changes changes, PrintWriter out) {
    if (changes.isNone()) {
      out.println("Nothing moved. Every photograph is still usable.");
      return;
    }
    for (Told told : changes.told()) {
      out.println(told.who());
      told.sentences().forEach(sentence -> out.println("  " + sentence));
      out.println();
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
