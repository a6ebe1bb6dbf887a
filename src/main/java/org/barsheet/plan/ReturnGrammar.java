package org.barsheet.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.barsheet.input.PlainText;
import org.barsheet.input.SyntaxException;
import org.barsheet.motif.Form;

/**
 * Reads which return of a motif is meant: {@code glimmer 3}, {@code glimmer near bar 33}, {@code
 * glimmer inverted in "Violin 2" near bar 40}.
 */
final class ReturnGrammar {

  private static final String ACCEPTED =
      "write glimmer 3 for the third return, glimmer near bar 33, glimmer in Oboe near bar 33, "
          + "glimmer inverted near bar 40, or glimmer for any";

  /** What spreadsheet programs and writing systems make of a quote. */
  private static final String OPENING_QUOTES = "\"“”„«";

  private static final String CLOSING_QUOTES = "\"”“»";

  private final TextCursor cursor;

  private ReturnGrammar(TextCursor cursor) {
    this.cursor = cursor;
  }

  /** The whole rest of a text. */
  static Place.OfMotif read(TextCursor cursor) {
    return new ReturnGrammar(cursor).ofMotif();
  }

  private Place.OfMotif ofMotif() {
    String name = motifName();
    Played played = played();
    OptionalInt near = OptionalInt.empty();
    OptionalInt number = OptionalInt.empty();
    if (cursor.takeWord("near")) {
      if (!cursor.takeWord("bar")) {
        throw cursor.faultHere("'bar' is expected here", ACCEPTED);
      }
      near = OptionalInt.of(cursor.takeWhole("the bar's number", ACCEPTED));
    } else if (cursor.atDigit()) {
      number = OptionalInt.of(number(played));
    }
    cursor.expectEnd(ACCEPTED);
    return new Place.OfMotif(name, played, number, near);
  }

  private int number(Played played) {
    int start = cursor.offset();
    int number = cursor.takeWhole("the return's number", ACCEPTED);
    if (number < 1) {
      throw cursor.fault(start, "the return's number counts from 1", ACCEPTED);
    }
    if (!played.equals(Played.ANYHOW)) {
      String sentence = "a number counts all returns, in any form and part";
      throw cursor.fault(start, sentence, "write near bar and the bar it is near");
    }
    return number;
  }

  private Played played() {
    List<Form> forms = new ArrayList<>();
    for (Optional<Form> form = form(); form.isPresent(); form = form()) {
      forms.add(form.get());
      for (String word : form.get().word().split(" ", -1)) {
        cursor.takeWord(word);
      }
    }
    Optional<String> part = cursor.takeWord("in") ? Optional.of(part()) : Optional.empty();
    return new Played(forms, part);
  }

  /** The form whose words come next. */
  private Optional<Form> form() {
    String rest = cursor.rest();
    return Arrays.stream(Form.values()).filter(form -> startsWith(rest, form.word())).findFirst();
  }

  private static boolean startsWith(String text, String words) {
    boolean same = text.regionMatches(true, 0, words, 0, words.length());
    return same && (text.length() == words.length() || text.charAt(words.length()) == ' ');
  }

  private String part() {
    int start = cursor.offset();
    if (OPENING_QUOTES.indexOf(cursor.peek()) >= 0) {
      return quotedPart(start);
    }
    StringBuilder name = new StringBuilder();
    while (!cursor.atEnd() && !startsWith(cursor.rest(), "near")) {
      name.append(name.isEmpty() ? "" : " ").append(cursor.takeToken());
    }
    if (name.isEmpty()) {
      throw cursor.faultHere("the part's name is missing here", ACCEPTED);
    }
    String part = name.toString();
    if (Played.needsQuotes(part)) {
      String sentence = "'" + part + "' may be a part, or a part and a number";
      throw cursor.fault(start, sentence, "write the part's name in quotes: in \"" + part + "\"");
    }
    return part;
  }

  private String quotedPart(int start) {
    String rest = cursor.rest();
    int end = 1;
    while (end < rest.length() && CLOSING_QUOTES.indexOf(rest.charAt(end)) < 0) {
      end++;
    }
    if (end < 2 || end == rest.length()) {
      String sentence = end < 2 ? "the part's name is missing here" : "this quote is not closed";
      throw cursor.fault(start, sentence, "write in \"Violin 2\"");
    }
    cursor.take(rest.substring(0, end + 1));
    return rest.substring(1, end).strip();
  }

  /** Words up to one that says which return is meant. */
  private String motifName() {
    StringBuilder name = new StringBuilder();
    while (Character.isLetter(cursor.peek()) && (name.isEmpty() || !saysWhich())) {
      int start = cursor.offset();
      String word = cursor.takeToken();
      int wrong = MotifNames.firstWrong(word);
      if (wrong >= 0) {
        String sentence =
            "'" + PlainText.signAt(word, wrong) + "' does not belong in a motif's name";
        throw cursor.fault(start + wrong, sentence, PlaceGrammar.ACCEPTED);
      }
      name.append(name.isEmpty() ? "" : " ").append(word);
    }
    if (name.isEmpty()) {
      String sign = PlainText.signAt(cursor.text(), 0);
      String sentence = "no place begins with '" + sign + "'";
      throw new SyntaxException(cursor.text(), 0, sentence, PlaceGrammar.ACCEPTED);
    }
    return name.toString();
  }

  private boolean saysWhich() {
    return startsWith(cursor.rest(), "near")
        || startsWith(cursor.rest(), "in")
        || form().isPresent();
  }
}
