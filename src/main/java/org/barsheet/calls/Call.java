package org.barsheet.calls;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.plan.Performer;

/**
 * What one performer is told: when they are seen, how to film themselves, what to send.
 *
 * @param performer who
 * @param about their part, and what the times are counted in
 * @param seen every appearance, in order of shot; empty where they are not seen yet
 * @param instructions what to do, under headings; the last one says what to send
 */
public record Call(
    Performer performer, String about, List<CallAppearance> seen, List<Section> instructions) {

  /** What stands over the appearances. */
  public static final String SEEN_HEADING = "When you are seen";

  /** What stands there where there are none. */
  public static final String NOT_SEEN = "You aren't in any shot yet.";

  /** Safety, the same for everybody: it comes after the instructions. */
  public static final List<Section> CAUTIONS =
      List.of(
          new Section("Take care", CallCautions.AT_HOME),
          new Section("Children", CallCautions.CHILDREN));

  public Call {
    seen = List.copyOf(seen);
    instructions = List.copyOf(instructions);
  }

  /**
   * The same call that says first what differs from what they were sent.
   *
   * @param since what that was, in words
   * @param news in sentences; none where nothing differs
   */
  public Call withNews(String since, List<String> news) {
    if (news.isEmpty()) {
      return this;
    }
    List<Section> all = new ArrayList<>();
    all.add(new Section("Changed since " + since, news));
    all.addAll(instructions);
    return new Call(performer, about, seen, all);
  }

  /**
   * Short texts that belong together.
   *
   * @param heading what stands over them
   * @param lines the texts
   */
  public record Section(String heading, List<String> lines) {
    public Section {
      lines = List.copyOf(lines);
    }
  }
}
