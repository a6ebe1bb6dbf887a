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
 * @param framings what of their frame is seen, an opening each
 * @param instructions what to do, under headings; the last one says what to send
 * @param toFillIn what the plan doesn't say and somebody writes in by hand
 */
public record Call(
    Performer performer,
    String about,
    List<CallAppearance> seen,
    List<CallFraming> framings,
    List<Section> instructions,
    List<String> toFillIn) {

  /** What stands over the appearances. */
  public static final String SEEN_HEADING = "When you are seen";

  /** What stands there where there are none. */
  public static final String NOT_SEEN = "You aren't in any shot yet.";

  /** The section that the drawings belong to. */
  public static final String FRAME_HEADING = "Frame";

  /** Safety, the same for everybody: it comes after the instructions. */
  public static final List<Section> CAUTIONS =
      List.of(
          new Section("Take care", CallCautions.AT_HOME),
          new Section("Children", CallCautions.CHILDREN));

  public Call {
    seen = List.copyOf(seen);
    framings = List.copyOf(framings);
    instructions = List.copyOf(instructions);
    toFillIn = List.copyOf(toFillIn);
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
    return new Call(performer, about, seen, framings, all, toFillIn);
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
