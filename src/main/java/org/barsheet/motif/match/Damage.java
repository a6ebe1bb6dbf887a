package org.barsheet.motif.match;

import java.util.ArrayList;
import java.util.List;

/** What a chain lost against its pattern, in words. */
public final class Damage {

  private final NoteField field;
  private final Chain chain;
  private final long tolerance;

  public Damage(NoteField field, Chain chain, long tolerance) {
    this.field = field;
    this.chain = chain;
    this.tolerance = tolerance;
  }

  /** "note 3 missing, note 5 late, 2 notes held too long"; empty if nothing differs. */
  public String words() {
    List<String> words = new ArrayList<>();
    List<Integer> shorter = new ArrayList<>();
    List<Integer> longer = new ArrayList<>();
    int otherParts = 0;
    for (int i = 0; i < chain.notes().size(); i++) {
      if (!chain.notes().has(i)) {
        words.add(name(i) + " missing");
        continue;
      }
      interval(i, words);
      moment(i, words);
      length(i, shorter, longer);
      otherParts += leavesPart(i) ? 1 : 0;
    }
    held(shorter, "held too short", words);
    held(longer, "held too long", words);
    if (otherParts > 0) {
      words.add(
          otherParts == 1
              ? "it changes to another part"
              : "it changes parts " + otherParts + " times");
    }
    return String.join(", ", words);
  }

  private String name(int i) {
    return "note " + (i + 1);
  }

  /** How the step to a note differs from the one asked. */
  private void interval(int i, List<String> words) {
    int before = before(i);
    if (before == Picks.NONE) {
      return;
    }
    int heard = pitch(i) - pitch(before);
    int asked = chain.pattern().interval(before, i);
    if (heard != asked) {
      int off = Intervals.stepsApart(asked, heard);
      String steps = off == 0 ? "a semitone or so" : off == 1 ? "a step" : off + " steps";
      words.add(name(i) + " " + steps + (heard > asked ? " too high" : " too low"));
    }
  }

  private void moment(int i, List<String> words) {
    long off = field.onTick(chain.notes().get(i)) - chain.start() - chain.pattern().onset(i);
    if (Math.abs(off) > tolerance) {
      words.add(name(i) + (off > 0 ? " late" : " early"));
    }
  }

  private void length(int i, List<Integer> shorter, List<Integer> longer) {
    long asked = chain.pattern().length(i);
    long heard = field.length(chain.notes().get(i));
    if (i < chain.notes().size() - 1 && MatchRules.length(asked, heard) > 0) {
      (heard < asked ? shorter : longer).add(i);
    }
  }

  private void held(List<Integer> notes, String how, List<String> words) {
    if (!notes.isEmpty()) {
      String which = notes.size() == 1 ? name(notes.get(0)) : notes.size() + " notes";
      words.add(which + " " + how);
    }
  }

  private boolean leavesPart(int i) {
    int before = before(i);
    return before != Picks.NONE
        && !field.sharePart(chain.notes().get(before), chain.notes().get(i));
  }

  private int before(int i) {
    int before = i - 1;
    while (before >= 0 && !chain.notes().has(before)) {
      before--;
    }
    return before;
  }

  private int pitch(int i) {
    return field.pitch(chain.notes().get(i));
  }
}
