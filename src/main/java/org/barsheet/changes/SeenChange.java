package org.barsheet.changes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.changes.LaidFilm.LaidAppearance;
import org.barsheet.clock.FrameSpan;

/**
 * What a performer must be told of one appearance: it is new, gone, or not as it was.
 *
 * @param seen who, where
 * @param before what they were told then, in words; "" for a new one
 * @param now what they are told now, in words; "" for one that is gone
 */
public record SeenChange(LaidAppearance seen, String before, String now) {

  /** Every appearance that is not told in the words of before, in order of shot; gone ones last. */
  static List<SeenChange> between(LaidFilm before, LaidFilm now) {
    List<SeenChange> changes = new ArrayList<>();
    for (LaidAppearance is : now.appearances()) {
      String was = of(before, is).map(seen -> words(before, seen)).orElse("");
      String words = words(now, is);
      if (!was.equals(words)) {
        changes.add(new SeenChange(is, was, words));
      }
    }
    for (LaidAppearance was : before.appearances()) {
      if (of(now, was).isEmpty()) {
        changes.add(new SeenChange(was, words(before, was), ""));
      }
    }
    return List.copyOf(changes);
  }

  private static Optional<LaidAppearance> of(LaidFilm film, LaidAppearance other) {
    return film.appearances().stream().filter(seen -> seen.isOf(other)).findFirst();
  }

  /** {@code bars 7 to 12, frames 420 to 609 (7.9 s), 0:24.8 to 0:32.8 in the guide}. */
  private static String words(LaidFilm film, LaidAppearance seen) {
    FrameSpan frames = seen.frames();
    int first = film.barAt(frames.start());
    int last = film.barAt(Math.max(frames.start(), frames.endExclusive() - 1));
    return (first == last ? "bar " + first : "bars " + first + " to " + last)
        + ", frames "
        + frames.start()
        + " to "
        + (frames.endExclusive() - 1)
        + " ("
        + film.rate().startOf(frames.length()).toDecimal(1)
        + " s), "
        + inGuide(film, frames.start())
        + " to "
        + inGuide(film, frames.endExclusive())
        + " in the guide"
        + (seen.part().isEmpty() ? "" : ", part " + seen.part());
  }

  private static String inGuide(LaidFilm film, long frame) {
    BigDecimal seconds =
        film.rate().startOf(frame).toDecimal(1).add(BigDecimal.valueOf(film.headSeconds()));
    BigDecimal[] minutes = seconds.divideAndRemainder(BigDecimal.valueOf(60));
    boolean oneDigit = minutes[1].compareTo(BigDecimal.TEN) < 0;
    return minutes[0].toBigInteger() + ":" + (oneDigit ? "0" : "") + minutes[1].toPlainString();
  }

  /** {@code panel 3, in boathouse}. */
  public String where() {
    return "panel " + seen.panel() + ", in " + seen.opening();
  }

  /** In a sentence without closing full stop. */
  public String sentence() {
    if (now.isEmpty()) {
      return where() + ": you're no longer seen there (" + before + ")";
    }
    return where() + ": " + (before.isEmpty() ? "new, " + now : now + "; was " + before);
  }
}
