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
import org.barsheet.changes.PictureChange.Use;
import org.barsheet.clock.FrameSpan;
import org.barsheet.timing.LaidPanel;
import org.barsheet.timing.PanelChange;

/** Everything that moved, a line each: bars, cues, panels, pictures. */
final class ChangeLines {

  private ChangeLines() {}

  static List<ChangeLine> of(Changes changes) {
    List<ChangeLine> lines = new ArrayList<>();
    changes.bars().stream()
        .filter(shift -> shift.frames() != 0)
        .forEach(shift -> lines.add(bars(shift)));
    changes.cues().forEach(cue -> lines.add(cue(cue)));
    changes.panels().forEach(panel -> lines.add(panel(panel)));
    addPictures(lines, changes.pictures());
    return List.copyOf(lines);
  }

  private static ChangeLine bars(BarShift shift) {
    String name =
        shift.firstBar() == shift.lastBar()
            ? "bar " + shift.firstBar()
            : "bars " + shift.firstBar() + " to " + shift.lastBar();
    return new ChangeLine(Kind.BARS, name, "", "", OptionalLong.of(shift.frames()), "");
  }

  private static ChangeLine cue(CueChange change) {
    LaidCue named = change.now().or(change::before).orElseThrow();
    OptionalLong later =
        change.before().isPresent() && change.now().isPresent()
            ? OptionalLong.of(change.now().get().frame() - change.before().get().frame())
            : OptionalLong.empty();
    return new ChangeLine(
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
      return "nothing tells them apart: say which";
    }
    if (change.now().isEmpty()) {
      return "a panel that asks for " + asked + " needs another place";
    }
    LaidCue now = change.now().get();
    return now.title().equals(asked)
        ? ""
        : "'" + asked + "' in the plan is other music now: ask for " + now.title();
  }

  private static ChangeLine panel(PanelChange change) {
    OptionalLong later =
        change.stays() ? OptionalLong.of(change.beginsLater()) : OptionalLong.empty();
    return new ChangeLine(
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

  /** Pictures of one movement in a row that are to be used alike stand on one line. */
  private static void addPictures(List<ChangeLine> lines, List<PictureChange> pictures) {
    Set<String> kept =
        pictures.stream()
            .flatMap(picture -> picture.instead().stream())
            .collect(Collectors.toUnmodifiableSet());
    for (int i = 0; i < pictures.size(); ) {
      int end = i + 1;
      while (end < pictures.size() && goesOn(pictures.get(end - 1), pictures.get(end), kept)) {
        end++;
      }
      lines.add(pictures(pictures.subList(i, end), kept));
      i = end;
    }
  }

  private static boolean goesOn(PictureChange last, PictureChange next, Set<String> kept) {
    return last.use() == next.use()
        && (last.use() != Use.NOT_SHOWN
            || kept.contains(last.picture()) == kept.contains(next.picture()))
        && last.use() != Use.RESAMPLE
        && movement(last).equals(movement(next));
  }

  private static String movement(PictureChange picture) {
    return picture.picture().substring(0, picture.picture().lastIndexOf(' ') + 1);
  }

  private static ChangeLine pictures(List<PictureChange> alike, Set<String> kept) {
    PictureChange first = alike.get(0);
    PictureChange last = alike.get(alike.size() - 1);
    String name =
        alike.size() == 1
            ? first.picture()
            : first.picture() + " to " + last.picture().substring(movement(last).length());
    return new ChangeLine(
        Kind.PICTURES,
        name,
        first.instead().orElse(""),
        percent(first.progress()) + (alike.size() == 1 ? "" : " to " + percent(last.progress())),
        OptionalLong.empty(),
        todo(first, alike.size(), kept));
  }

  private static String todo(PictureChange picture, int count, Set<String> kept) {
    return switch (picture.use()) {
      case STILL_SERVES -> count == 1 ? "still serves" : all(count) + " still serve";
      case RESAMPLE ->
          "put the old pictures aside; their "
              + picture.instead().orElseThrow()
              + " becomes this one, "
              + percent(picture.error())
              + " off";
      case TAKE -> count == 1 ? "to be taken" : all(count) + " to be taken";
      case NOT_SHOWN ->
          kept.contains(picture.picture())
              ? "not shown under this name any more, but under another: keep it"
              : "not shown any more";
    };
  }

  private static String all(int count) {
    return count == 2 ? "both" : "all " + count;
  }

  private static String percent(BigDecimal share) {
    return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString() + " %";
  }
}
