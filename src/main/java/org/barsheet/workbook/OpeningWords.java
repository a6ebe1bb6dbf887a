package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.exposure.OpeningState;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Opening;
import org.barsheet.timing.Shot;

/** How far an opening stands open from panel to panel, in words. */
final class OpeningWords {

  /** Less than this is closed, and less than this from fully open is open: half a percent. */
  private static final double HALF_PERCENT = 0.005;

  private OpeningWords() {}

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
    return String.join("; ", lines);
  }

  /** What stands open on a shot's first frame, and how far. */
  static String atCut(FilmSheet film, Shot shot) {
    List<String> open = new ArrayList<>();
    List<String> closed = new ArrayList<>();
    for (OpeningState state : film.statesOf(shot)) {
      if (isClosed(state.atFirstFrame())) {
        closed.add(state.opening());
      } else {
        open.add(named(state.opening(), state.atFirstFrame()));
      }
    }
    if (open.isEmpty()) {
      return "all closed at the cut";
    } else if (closed.isEmpty()) {
      return "all open at the cut" + partly(open);
    } else if (open.size() > closed.size()) {
      return "all open at the cut but " + String.join(", ", closed) + partly(open);
    }
    return "open at the cut: " + String.join(", ", open);
  }

  /** Those of many that stand open only in part. */
  private static String partly(List<String> open) {
    List<String> partly = open.stream().filter(words -> words.endsWith(" %")).toList();
    return partly.isEmpty() ? "" : "; partly: " + String.join(", ", partly);
  }

  /**
   * What a shot leaves half done: how far those openings stand open on its last frame. Any other
   * that moves ends open or closed, as its movement says, and the rest stays as at the cut.
   */
  static Optional<String> atEnd(FilmSheet film, Shot shot) {
    List<String> changed = new ArrayList<>();
    for (OpeningState state : film.statesOf(shot)) {
      boolean moves = Math.abs(state.atFirstFrame() - state.atLastFrame()) >= HALF_PERCENT;
      if (moves && !isOpen(state.atLastFrame()) && !isClosed(state.atLastFrame())) {
        changed.add(state.opening() + " " + far(state.atLastFrame()));
      }
    }
    return changed.isEmpty()
        ? Optional.empty()
        : Optional.of("at the end: " + String.join(", ", changed));
  }

  private static String named(String opening, double share) {
    return isOpen(share) ? opening : opening + " " + percent(share) + " %";
  }

  private static boolean isClosed(double share) {
    return share < HALF_PERCENT;
  }

  private static boolean isOpen(double share) {
    return share > 1 - HALF_PERCENT;
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
    if (isClosed(share)) {
      return "closed";
    }
    return isOpen(share) ? "open" : "open " + percent(share) + " %";
  }

  private static long percent(double share) {
    return Math.round(100 * share);
  }
}
