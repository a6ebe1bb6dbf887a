package org.barsheet.plan;

import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Timecode;
import org.barsheet.input.SyntaxException;

/** Where in the music something happens. {@code toString} prints what the grammar reads. */
public sealed interface Place {

  /**
   * Reads {@code glimmer 3}, {@code glimmer near bar 33}, {@code glimmer inverted in Oboe}, {@code
   * bar 12 time 2 beat 2.5}, {@code mark Chorus}, {@code 01:00:12:00}, {@code 2 bars into panel 3};
   * an empty text is anywhere.
   *
   * @param rate the film's, for timecodes
   * @throws SyntaxException at the first character that does not belong
   */
  static Place parse(String text, FrameRate rate) {
    return PlaceGrammar.parse(text, rate);
  }

  /** Wherever it fits between its neighbors, on a bar line if possible. */
  record Anywhere() implements Place {
    @Override
    public String toString() {
      return "";
    }
  }

  /**
   * An occurrence of a motif.
   *
   * @param motif its name
   * @param played only one of this form, by this part
   * @param number the third one, counting certain and likely ones in time order, whoever plays
   *     them; empty: any free one
   * @param nearBar the one nearest to this printed bar; at most one of the two is given
   */
  record OfMotif(String motif, Played played, OptionalInt number, OptionalInt nearBar)
      implements Place {

    public OfMotif {
      if (number.isPresent() && (nearBar.isPresent() || !played.equals(Played.ANYHOW))) {
        throw new IllegalArgumentException("a number alone says which return is meant");
      }
    }

    /** One of any form, played by anybody. */
    public OfMotif(String motif, OptionalInt number, OptionalInt nearBar) {
      this(motif, Played.ANYHOW, number, nearBar);
    }

    /** Whether it leaves open which return is meant. */
    public boolean isAny() {
      return number.isEmpty() && nearBar.isEmpty();
    }

    @Override
    public String toString() {
      return motif
          + played
          + (number.isPresent() ? " " + number.getAsInt() : "")
          + (nearBar.isPresent() ? " near bar " + nearBar.getAsInt() : "");
    }
  }

  /**
   * A beat of a bar.
   *
   * @param bar printed number
   * @param time which time round; empty where the plan does not say
   * @param beat felt beat, from 1
   */
  record AtBar(int bar, OptionalInt time, BigFraction beat) implements Place {
    @Override
    public String toString() {
      return "bar "
          + bar
          + (time.isPresent() ? " time " + time.getAsInt() : "")
          + (beat.equals(BigFraction.ONE) ? "" : " beat " + Length.decimal(beat));
    }
  }

  /**
   * A marker or cue point of the file.
   *
   * @param name its text
   */
  record AtMark(String name) implements Place {
    @Override
    public String toString() {
      return "mark " + name;
    }
  }

  /**
   * A timecode of the film.
   *
   * @param timecode at the film's rate
   */
  record AtTimecode(Timecode timecode) implements Place {
    @Override
    public String toString() {
      return timecode.toString();
    }
  }

  /**
   * So long after a panel's shot begins.
   *
   * @param panel name of that panel
   * @param offset one amount
   */
  record IntoPanel(String panel, Length offset) implements Place {
    @Override
    public String toString() {
      return offset + " into panel " + panel;
    }
  }

  /** The motif a place names, if it names one. */
  default Optional<String> motifName() {
    return this instanceof OfMotif of ? Optional.of(of.motif()) : Optional.empty();
  }
}
