package org.barsheet.changes;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Fate.Kept;
import org.barsheet.revision.Fate.Undecided;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;

/** How it is said that music is elsewhere than it was. */
final class MovedWords {

  private MovedWords() {}

  /** {@code asks for themeA 3}, {@code mill lands on bar 18}. */
  static String request(LaidAsk ask) {
    return switch (ask.kind()) {
      case CUE -> ask.words().isEmpty() ? "has its place" : "asks for " + ask.words();
      case CUT -> "cuts at " + ask.words();
      case REVEAL -> ask.of() + " lands on " + ask.words();
      case PIN -> "the pin of " + ask.words();
      case MOTIF -> "motif " + ask.of() + " is heard at " + ask.words();
    };
  }

  /** {@code that was Violins I in bar 16, which is themeA 4 in bar 20 now}. */
  static String ofReturn(CueChange change, Revision revision) {
    LaidCue was = change.before().orElseThrow();
    String said = "that was " + played(was) + ", ";
    if (change.now().isPresent()) {
      return said
          + "which is "
          + change.now().get().title()
          + " in bar "
          + change.now().get().bar()
          + " now";
    }
    if (!change.perhaps().isEmpty()) {
      return said
          + "which may be "
          + change.perhaps().stream().map(LaidCue::words).collect(Collectors.joining(" or "))
          + " now";
    }
    BigFraction start = BigFraction.of(was.held().orElseThrow().notes().get(0).at());
    Fate<BigFraction> place = revision.ofQuarters(start.divide(ScoreNotes.UNITS));
    return place.sure().isPresent()
        ? said
            + "where "
            + was.name()
            + " no longer returns ("
            + at(revision.now(), place.sure().get())
            + " now)"
        : said + "which is gone";
  }

  /** {@code that is bar 22 now}. */
  static String ofPlace(LaidAsk ask, BigFraction was, Fate<BigFraction> fate, Revision revision) {
    String old = at(revision.before(), was);
    boolean said = ask.words().equals(old);
    String subject = said ? "that " : "that was " + old + ", which ";
    if (fate instanceof Kept<BigFraction> kept) {
      return subject + "is " + at(revision.now(), kept.now()) + " now";
    }
    if (fate instanceof Undecided<BigFraction> undecided) {
      List<String> places =
          undecided.candidates().stream().map(time -> at(revision.now(), time)).toList();
      return subject
          + "may be "
          + String.join(" or ", places)
          + " now"
          + (undecided.perhapsGone() ? ", or gone" : "");
    }
    return subject + "is gone";
  }

  /** {@code themeA 3 is a new return, Oboe in bar 15}. */
  static String now(LaidAsk ask, LaidCue is, Optional<LaidCue> previous) {
    return ask.words()
        + (previous.isEmpty()
            ? " is a new return, " + played(is)
            : " is " + played(is) + " now, which was " + previous.get().words());
  }

  /** {@code bar 18 is new}, {@code bar 18 was bar 14}. */
  static String now(LaidAsk ask, BigFraction is, Revision revision) {
    Optional<BigFraction> previous = revision.previously(is);
    String there = at(revision.now(), is);
    String said = ask.words().equals(there) ? there : ask.words() + " is " + there + " now, which";
    return said + previous.map(time -> " was " + at(revision.before(), time)).orElse(" is new");
  }

  private static String played(LaidCue cue) {
    List<String> parts = cue.held().map(held -> held.parts()).orElse(List.of());
    return (parts.isEmpty() ? cue.title() : parts.get(0)) + " in bar " + cue.bar();
  }

  private static String at(ScoreNotes score, BigFraction quarters) {
    return score.placeAt(quarters).toString();
  }
}
