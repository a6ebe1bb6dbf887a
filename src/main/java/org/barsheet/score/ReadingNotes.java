package org.barsheet.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is odd in a file while it is read; keeps the first hundred. */
final class ReadingNotes {

  private static final int KEPT = 100;

  private final List<ReadingNote> notes = new ArrayList<>();
  private int left;
  private boolean lossLeft;

  /** Something odd that costs no note. */
  void add(long byteOffset, String sentence) {
    add(new ReadingNote(byteOffset, sentence, false));
  }

  /** Damage that may have cost notes. */
  void addLoss(long byteOffset, String sentence) {
    add(new ReadingNote(byteOffset, sentence, true));
  }

  private void add(ReadingNote note) {
    if (notes.size() < KEPT) {
      notes.add(note);
    } else {
      left++;
      lossLeft |= note.musicLost();
    }
  }

  /** In order of place; the last one counts those that were not kept. */
  List<ReadingNote> inOrder() {
    List<ReadingNote> sorted = new ArrayList<>(notes);
    sorted.sort(Comparator.comparingLong(ReadingNote::byteOffset));
    if (left > 0) {
      long last = sorted.get(sorted.size() - 1).byteOffset();
      String sentence = "the file has " + left + " more oddities like these";
      sorted.add(new ReadingNote(last, sentence, lossLeft));
    }
    return sorted;
  }
}
