package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.exposure.OpeningState;
import org.barsheet.plan.Opening;

/** How far an opening stands open from panel to panel, in words. */
final class OpeningStates {

  /** Less than this is closed, and less than this from fully open is open: half a percent. */
  private static final double HALF_PERCENT = 0.005;

  private OpeningStates() {}

  /** Runs of panels with the same state, one a line: {@code 1 to 6: closed}. */
  static String of(FilmSheet film, Opening opening) {
    List<OpeningState> states =
        film.states().stream().filter(state -> state.opening().equals(opening.name())).toList();
    List<String> lines = new ArrayList<>();
    int from = 0;
    while (from < states.size()) {
      int end = from + 1;
      while (end < states.size() && words(states.get(end)).equals(words(states.get(from)))) {
        end++;
      }
      String first = panel(film, states.get(from));
      String last = panel(film, states.get(end - 1));
      String panels = end - from == 1 ? first : first + " to " + last;
      lines.add(panels + ": " + words(states.get(from)));
      from = end;
    }
    return String.join("\n", lines);
  }

  private static String panel(FilmSheet film, OpeningState state) {
    return film.timing().shots().get(state.shot()).panel().name();
  }

  private static String words(OpeningState state) {
    double first = state.atFirstFrame();
    double last = state.atLastFrame();
    if (Math.abs(first - last) < HALF_PERCENT) {
      return far(first);
    }
    return (last > first ? "opens, " : "closes, ") + percent(first) + " to " + percent(last) + " %";
  }

  private static String far(double share) {
    if (share < HALF_PERCENT) {
      return "closed";
    }
    return share > 1 - HALF_PERCENT ? "open" : "open " + percent(share) + " %";
  }

  private static long percent(double share) {
    return Math.round(100 * share);
  }
}
