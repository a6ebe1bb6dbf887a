package org.barsheet.plan.read;

import java.util.Optional;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Opening;
import org.barsheet.plan.TextCursor;

/** Reads {@code putty up to 25 mm} and {@code thread from 200 mm above the hinge}. */
final class Supports {

  private static final String PUTTY = "write putty, or putty up to 25 mm";
  private static final String THREAD = "write thread, or thread from 200 mm above the hinge";

  private Supports() {}

  /** Putty and thread in their own words; anything else is the animator's own word. */
  static Opening.Support parse(String text) {
    TextCursor cursor = new TextCursor(text);
    if (cursor.takeWord("putty")) {
      Optional<Double> upTo = amount(cursor, new String[] {"up", "to"}, PUTTY);
      cursor.expectEnd(PUTTY);
      return new Opening.Support("putty", upTo, Optional.empty(), cursor.text());
    }
    if (cursor.takeWord("thread")) {
      Optional<Double> guide = amount(cursor, new String[] {"from"}, THREAD);
      if (guide.isPresent()) {
        expectWords(cursor, new String[] {"above", "the", "hinge"}, THREAD);
      }
      cursor.expectEnd(THREAD);
      return new Opening.Support("thread", Optional.empty(), guide, cursor.text());
    }
    String kind = cursor.takeToken();
    return new Opening.Support(kind, Optional.empty(), Optional.empty(), cursor.text());
  }

  private static Optional<Double> amount(TextCursor cursor, String[] words, String remedy) {
    if (cursor.atEnd()) {
      return Optional.empty();
    }
    expectWords(cursor, words, remedy);
    return Optional.of(Measures.takeMillimeters(cursor));
  }

  private static void expectWords(TextCursor cursor, String[] words, String remedy) {
    for (String word : words) {
      if (!cursor.takeWord(word)) {
        throw cursor.faultHere("'" + word + "' is expected here", remedy);
      }
    }
  }
}
