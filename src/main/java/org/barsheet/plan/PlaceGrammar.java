package org.barsheet.plan;

import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Timecode;

/** Reads where in the music something happens. */
public final class PlaceGrammar {

  static final String ACCEPTED =
      "write a motif and its number (glimmer 3), glimmer near bar 33, glimmer in Oboe near bar 33, "
          + "bar 12, bar 12 beat 2.5, mark Chorus, 01:00:12:00 or 2 bars into panel 3";

  private static final String ACCEPTED_AT_BAR = "write bar 12, bar 12 beat 2.5 or bar 12 time 2";
  private static final String ACCEPTED_INTO_PANEL =
      "write 2 bars into panel 3 or 36 f into panel 3";

  private final TextCursor cursor;
  private final FrameRate rate;

  private PlaceGrammar(String text, FrameRate rate) {
    this.cursor = new TextCursor(text);
    this.rate = rate;
  }

  static Place parse(String text, FrameRate rate) {
    PlaceGrammar grammar = new PlaceGrammar(text, rate);
    Place place = grammar.place();
    grammar.cursor.expectEnd(ACCEPTED);
    return place;
  }

  /** Whether a text would be read as a timecode, right or wrong. */
  public static boolean looksLikeTimecode(String text) {
    String stripped = text.strip();
    return !stripped.isEmpty() && Character.isDigit(stripped.charAt(0)) && stripped.contains(":");
  }

  private Place place() {
    if (cursor.atEnd()) {
      return new Place.Anywhere();
    }
    if (looksLikeTimecode(cursor.text())) {
      return new Place.AtTimecode(Timecode.parse(rate, cursor.takeRest()));
    }
    if (cursor.text().strip().matches("[0-9]+")) {
      throw cursor.faultHere(
          "a number alone isn't a place",
          "write bar " + cursor.text().strip() + " if a bar is meant");
    }
    if (cursor.atDigit()) {
      return intoPanel();
    }
    if (cursor.takeWord("bar")) {
      return atBar();
    }
    if (cursor.takeWord("mark")) {
      return atMark();
    }
    return ReturnGrammar.read(cursor);
  }

  private Place intoPanel() {
    Length offset = LengthGrammar.readAmount(cursor, ACCEPTED_INTO_PANEL);
    if (!cursor.takeWord("into") || !cursor.takeWord("panel")) {
      throw cursor.faultHere("'into panel' is expected here", ACCEPTED_INTO_PANEL);
    }
    if (cursor.atEnd()) {
      throw cursor.faultHere("the panel's name is missing here", ACCEPTED_INTO_PANEL);
    }
    Place place = new Place.IntoPanel(cursor.takeToken(), offset);
    cursor.expectEnd(ACCEPTED_INTO_PANEL);
    return place;
  }

  private Place atBar() {
    int bar = cursor.takeWhole("the bar's number", ACCEPTED_AT_BAR);
    OptionalInt time = OptionalInt.empty();
    BigFraction beat = BigFraction.ONE;
    if (cursor.takeWord("time")) {
      time = OptionalInt.of(countFromOne("the number of times round", ACCEPTED_AT_BAR));
    }
    if (cursor.takeWord("beat")) {
      beat = beat();
    }
    cursor.expectEnd(ACCEPTED_AT_BAR);
    return new Place.AtBar(bar, time, beat);
  }

  private BigFraction beat() {
    int start = cursor.offset();
    BigFraction beat = cursor.takeNumber("the beat's number", ACCEPTED_AT_BAR);
    cursor.blanks();
    if (beat.compareTo(BigFraction.ONE) < 0) {
      throw cursor.fault(start, "beats count from 1", ACCEPTED_AT_BAR);
    }
    return beat;
  }

  private Place atMark() {
    if (cursor.atEnd()) {
      throw cursor.faultHere("the mark's text is missing here", "write mark Chorus");
    }
    return new Place.AtMark(cursor.takeRest());
  }

  private int countFromOne(String what, String remedy) {
    int start = cursor.offset();
    int number = cursor.takeWhole(what, remedy);
    if (number < 1) {
      throw cursor.fault(start, what + " counts from 1", remedy);
    }
    return number;
  }
}
