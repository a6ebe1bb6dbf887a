package org.barsheet.changes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.input.Prose;
import org.barsheet.revision.Fate;
import org.barsheet.revision.Revision;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** Looks at each place of a plan that asks in the words it used for an earlier run. */
final class OtherMusicFinder {

  private final LaidMusic before;
  private final LaidMusic now;
  private final Revision revision;
  private final Map<LaidCue, CueChange> changes = new HashMap<>();
  private final Map<LaidCue, LaidCue> previous = new HashMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<LaidAsk> unresolved = new ArrayList<>();

  OtherMusicFinder(LaidMusic before, LaidMusic now, Revision revision) {
    this.before = before;
    this.now = now;
    this.revision = revision;
    for (CueChange change : CuePairing.all(before.cues(), now.cues(), Optional.of(revision))) {
      change.before().ifPresent(was -> changes.put(was, change));
      change
          .now()
          .flatMap(is -> change.before())
          .ifPresent(was -> previous.put(change.now().orElseThrow(), was));
    }
  }

  /**
   * Looks at every place.
   *
   * @param before the earlier run; with its notes
   * @param now the later run; with its notes
   */
  static OtherMusicFinder of(LaidMusic before, LaidMusic now) {
    Revision revision = Revision.between(before.notes().orElseThrow(), now.notes().orElseThrow());
    OtherMusicFinder finder = new OtherMusicFinder(before, now, revision);
    now.asks().forEach(finder::look);
    return finder;
  }

  List<Finding> findings() {
    return findings;
  }

  /** The earlier run with those of its places that stand on other music now. */
  LaidMusic unresolved() {
    return new LaidMusic(before.notes(), before.cues(), unresolved, before.called());
  }

  private void look(LaidAsk is) {
    Optional<LaidAsk> same = before.asks().stream().filter(is::isSame).findFirst();
    if (same.isEmpty() || same.get().quarters().isEmpty()) {
      return;
    }
    LaidAsk was = same.get();
    int sofar = findings.size();
    Optional<LaidCue> held = before.cue(was.cue()).filter(cue -> changes.containsKey(cue));
    if (held.isPresent() && held.get().held().isPresent()) {
      ofReturn(is, held.get());
    } else {
      ofPlace(is, was.quarters().orElseThrow());
    }
    if (findings.size() > sofar) {
      unresolved.add(was);
    }
  }

  private void ofReturn(LaidAsk ask, LaidCue was) {
    CueChange change = changes.get(was);
    Optional<LaidCue> is = now.cue(ask.cue());
    if (change != null && (change.now().isEmpty() || !change.now().equals(is))) {
      boolean undecided = !change.perhaps().isEmpty();
      String there = undecided ? "" : there(ask, is);
      add(ask, MovedWords.ofReturn(change, revision) + there, undecided);
    }
  }

  private void ofPlace(LaidAsk ask, BigFraction was) {
    Fate<BigFraction> fate = revision.ofQuarters(was);
    if (fate.sure().isEmpty() || !fate.sure().equals(ask.quarters())) {
      boolean undecided = fate instanceof Fate.Undecided;
      String there = undecided ? "" : there(ask, now.cue(ask.cue()));
      add(ask, MovedWords.ofPlace(ask, was, fate, revision) + there, undecided);
    }
  }

  /** What stands there now, "; themeA 3 is a new return, Oboe in bar 15". */
  private String there(LaidAsk ask, Optional<LaidCue> is) {
    if (ask.quarters().isEmpty() || ask.words().isEmpty()) {
      return "";
    }
    if (is.filter(cue -> cue.held().isPresent()).isPresent()) {
      return "; " + MovedWords.now(ask, is.get(), Optional.ofNullable(previous.get(is.get())));
    }
    return "; " + MovedWords.now(ask, ask.quarters().get(), revision);
  }

  private void add(LaidAsk ask, String moved, boolean undecided) {
    List<String> called = before.called().getOrDefault(ask.panel(), List.of());
    boolean fixed = !ask.held().isEmpty() || !called.isEmpty();
    String sentence = MovedWords.request(ask) + ": " + moved + because(ask, called);
    String remedy =
        undecided
            ? "say which music you mean; barsheet adopt suggests places"
            : "to put it back, run barsheet adopt; to leave it here, name the part and the bar";
    findings.add(
        new Finding(
            fixed ? Severity.ERROR : Severity.WARNING,
            Concerns.DIRECTOR,
            ask.panel(),
            "",
            OptionalLong.empty(),
            sentence,
            remedy));
  }

  private static String because(LaidAsk ask, List<String> called) {
    return switch (ask.held()) {
      case "locked" -> "; the panel is locked";
      case "photographed" -> "; its photographs are taken";
      default -> called.isEmpty() ? "" : "; " + Prose.listed(called) + " was called for it";
    };
  }
}
