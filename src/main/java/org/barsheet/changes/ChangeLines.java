package org.barsheet.changes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.changes.ChangeLine.Kind;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.changes.PhotographChange.Use;
import org.barsheet.clock.FrameSpan;
import org.barsheet.timing.LaidPanel;
import org.barsheet.timing.PanelChange;

/** Everything that moved, a line each: bars, cues, panels, photographs. */
final class ChangeLines {

  private ChangeLines() {}

  static List<ChangeLine> of(Changes changes) {
    List<ChangeLine> lines = new ArrayList<>();
    changes
        .otherMusic()
        .findings()
        .forEach(
            found ->
                lines.add(
                    new ChangeLine(
                        Told.DIRECTOR,
                        Kind.PLAN,
                        found.panel(),
                        "",
                        found.sentence(),
                        OptionalLong.empty(),
                        found.remedy())));
    changes.bars().stream()
        .filter(shift -> shift.frames() != 0)
        .forEach(shift -> lines.add(bars(shift)));
    changes.cues().forEach(cue -> lines.add(cue(cue)));
    changes.panels().forEach(panel -> lines.add(panel(panel)));
    changes.seen().forEach(seen -> lines.add(seen(seen)));
    lines.addAll(photographs(changes));
    return List.copyOf(lines);
  }

  /** The photographs alone. */
  static List<ChangeLine> photographs(Changes changes) {
    List<ChangeLine> lines = new ArrayList<>();
    addPhotographs(lines, changes.photographs());
    return lines;
  }

  private static ChangeLine seen(SeenChange change) {
    return new ChangeLine(
        change.seen().performer(),
        Kind.SEEN,
        change.where(),
        change.before().isEmpty() ? "new" : change.before(),
        change.now().isEmpty() ? "gone" : change.now(),
        OptionalLong.empty(),
        "send them the new call sheet");
  }

  private static ChangeLine bars(BarShift shift) {
    String name =
        shift.firstBar() == shift.lastBar()
            ? "bar " + shift.firstBar()
            : "bars " + shift.firstBar() + " to " + shift.lastBar();
    return new ChangeLine(
        Told.DIRECTOR, Kind.BARS, name, "", "", OptionalLong.of(shift.frames()), "");
  }

  private static ChangeLine cue(CueChange change) {
    LaidCue named = change.now().or(change::before).orElseThrow();
    OptionalLong later =
        change.before().isPresent() && change.now().isPresent()
            ? OptionalLong.of(change.now().get().frame() - change.before().get().frame())
            : OptionalLong.empty();
    return new ChangeLine(
        Told.DIRECTOR,
        Kind.CUE,
        named.title(),
        change.before().map(LaidCue::words).orElse("new"),
        change.now().map(LaidCue::words).orElse(undecided(change)),
        later,
        remedy(change));
  }

  private static String undecided(CueChange change) {
    return change.perhaps().isEmpty()
        ? "gone"
        : change.perhaps().stream().map(LaidCue::words).collect(Collectors.joining(" or "));
  }

  private static String remedy(CueChange change) {
    if (change.before().isEmpty() || !change.before().get().isOccurrence()) {
      return "";
    }
    String asked = change.before().get().title();
    if (!change.perhaps().isEmpty()) {
      return "they look alike: say which";
    }
    if (change.now().isEmpty()) {
      return "a panel that asks for " + asked + " needs another place";
    }
    LaidCue now = change.now().get();
    return now.title().equals(asked)
        ? ""
        : "'" + asked + "' in the plan is different music now: ask for " + now.title();
  }

  private static ChangeLine panel(PanelChange change) {
    OptionalLong later =
        change.stays() ? OptionalLong.of(change.beginsLater()) : OptionalLong.empty();
    return new ChangeLine(
        Told.EDITOR,
        Kind.PANEL,
        change.panel(),
        change.before().map(ChangeLines::laid).orElse("new"),
        change.now().map(ChangeLines::laid).orElse("gone"),
        later,
        change.now().isPresent() ? "print its exposure pages again" : "");
  }

  private static String laid(LaidPanel panel) {
    FrameSpan frames = panel.frames();
    return "frames "
        + frames.start()
        + " to "
        + (frames.endExclusive() - 1)
        + ", on "
        + panel.cue();
  }

  /** Photographs of one movement in a row that are to be used alike stand on one line. */
  private static void addPhotographs(List<ChangeLine> lines, List<PhotographChange> photographs) {
    Set<String> kept =
        photographs.stream()
            .flatMap(photograph -> photograph.instead().stream())
            .collect(Collectors.toUnmodifiableSet());
    for (int i = 0; i < photographs.size(); ) {
      int end = i + 1;
      while (end < photographs.size()
          && goesOn(photographs.get(end - 1), photographs.get(end), kept)) {
        end++;
      }
      lines.add(alike(photographs.subList(i, end), kept));
      i = end;
    }
  }

  private static boolean goesOn(PhotographChange last, PhotographChange next, Set<String> kept) {
    return last.use() == next.use()
        && (last.use() != Use.NOT_SHOWN
            || kept.contains(last.photograph()) == kept.contains(next.photograph()))
        && last.use() != Use.RESAMPLE
        && movement(last).equals(movement(next));
  }

  private static String movement(PhotographChange photograph) {
    return photograph.photograph().substring(0, photograph.photograph().lastIndexOf(' ') + 1);
  }

  private static ChangeLine alike(List<PhotographChange> alike, Set<String> kept) {
    PhotographChange first = alike.get(0);
    PhotographChange last = alike.get(alike.size() - 1);
    String name =
        alike.size() == 1
            ? first.photograph()
            : first.photograph() + " to " + last.photograph().substring(movement(last).length());
    return new ChangeLine(
        Told.ANIMATOR,
        Kind.PHOTOGRAPHS,
        name,
        first.instead().orElse(""),
        percent(first.progress()) + (alike.size() == 1 ? "" : " to " + percent(last.progress())),
        OptionalLong.empty(),
        todo(first, alike.size(), kept));
  }

  private static String todo(PhotographChange photograph, int count, Set<String> kept) {
    return switch (photograph.use()) {
      case STILL_SERVES -> count == 1 ? "still usable" : all(count) + " still usable";
      case RESAMPLE ->
          "set the old photographs aside, then rename "
              + photograph.instead().orElseThrow()
              + " to this one ("
              + percent(photograph.error())
              + " off)";
      case TAKE -> count == 1 ? "still to take" : all(count) + " still to take";
      case NOT_SHOWN ->
          kept.contains(photograph.photograph())
              ? "now shown under another name: keep it"
              : "no longer shown";
    };
  }

  private static String all(int count) {
    return count == 2 ? "both" : "all " + count;
  }

  private static String percent(BigDecimal share) {
    return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString() + " %";
  }
}
