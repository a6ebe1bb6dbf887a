package org.barsheet.ticks;

import java.util.ArrayList;
import java.util.List;

/**
 * What taking some photographs of one movement, or one at rest, again needs.
 *
 * @param setup number of its setup
 * @param take name of the movement or of the photograph at rest
 * @param photographs to take again, in order
 * @param flap whether it moves something of paper, rather than a lamp or nothing
 * @param fresh openings whose flaps stand further open now than the first of them wants them
 * @param startsAt the photograph that it is set as before the first of them; "" where that is the
 *     first one
 * @param returns whether camera and lamps have been somewhere else since
 * @param plates that have to be taken again with them
 */
public record Retake(
    int setup,
    String take,
    List<String> photographs,
    boolean flap,
    List<String> fresh,
    String startsAt,
    boolean returns,
    List<String> plates) {

  public Retake {
    photographs = List.copyOf(photographs);
    fresh = List.copyOf(fresh);
    plates = List.copyOf(plates);
  }

  /** {@code bakers-lamp 012 to 017, bakers-lamp 020, bakers-lamp clean}. */
  public String which() {
    List<String> runs = new ArrayList<>();
    int from = 0;
    while (from < photographs.size()) {
      int to = from;
      while (to + 1 < photographs.size() && follows(to + 1)) {
        to++;
      }
      String last = photographs.get(to);
      String until = " to " + last.substring(last.lastIndexOf(' ') + 1);
      runs.add(photographs.get(from) + (from == to ? "" : until));
      from = to + 1;
    }
    return String.join(", ", runs);
  }

  /** Whether a photograph's number is the next after the one before. */
  private boolean follows(int index) {
    int before = DoneWords.number(photographs.get(index - 1));
    return before >= 0 && DoneWords.number(photographs.get(index)) == before + 1;
  }

  /** What to do, in sentences, without the last full stop. */
  public String words() {
    StringBuilder words = new StringBuilder();
    if (fresh.isEmpty()) {
      words.append(
          flap ? "the same flap will do: it has gone no further" : "nothing has to be cut afresh");
    } else {
      words.append("put in a fresh flap: ").append(String.join(", ", fresh));
    }
    if (!startsAt.isEmpty()) {
      words.append("; set it as in ").append(startsAt).append(" and compare on screen");
    }
    if (returns) {
      words.append("; you return to setup ").append(setup).append(", so square up carefully");
    }
    if (!plates.isEmpty()) {
      words.append("; take again too: ").append(String.join(", ", plates));
    }
    return words.toString();
  }
}
