package org.barsheet.adoption;

import java.util.List;

/**
 * Something of the plan that stands on the music, before and now.
 *
 * @param of what it is: {@code panel 6 cue}
 * @param before the plan's words
 * @param beforeAt the bar they meant, where they do not say it; else ""
 * @param now the plan's words now; the same where nothing has to change or a person has to say
 * @param nowAt the bar they mean now, where they do not say it; else ""
 * @param otherNotes whether the music there has other notes than before
 * @param question what a person has to decide, without closing full stop; "" for nothing
 * @param nearest what may be meant, in the plan's words, the likeliest first; for a question
 */
public record Carried(
    String of,
    String before,
    String beforeAt,
    String now,
    String nowAt,
    boolean otherNotes,
    String question,
    List<String> nearest) {

  public Carried {
    nearest = List.copyOf(nearest);
  }

  static Carried asked(String of, String before, String beforeAt, Outcome.Asked asked) {
    return new Carried(of, before, beforeAt, before, "", false, asked.sentence(), asked.nearest());
  }

  public boolean isAsked() {
    return !question.isEmpty();
  }

  /** Whether the plan's words change. */
  public boolean isChanged() {
    return !now.equals(before);
  }
}
