package org.barsheet.align;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.align.places.RevealRoom;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.input.Prose;
import org.barsheet.plan.Length;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Reveal;

/** Says in words why each panel sits where it does. */
final class Reasons {

  private final AlignerInput input;
  private final Layout layout;
  private final Map<String, Long> panelsOn;

  Reasons(AlignerInput input, Layout layout) {
    this.input = input;
    this.layout = layout;
    this.panelsOn =
        layout.places().stream()
            .collect(Collectors.groupingBy(place -> place.cue().id(), Collectors.counting()));
  }

  /** Why a panel sits where it does, without a closing full stop. */
  String of(int p) {
    Candidate place = layout.places().get(p);
    String why = place(p, place);
    boolean opens = p == 0 && place.kind() != Candidate.Kind.FIRST;
    String reason = (opens ? "the film's first shot; " + why : why) + cut(p, place);
    return input.panels().get(p).locked() && place.kind() != Candidate.Kind.LOCKED
        ? reason + "; locked, but no earlier sheets hold its frames"
        : reason;
  }

  private String place(int p, Candidate place) {
    Panel panel = input.panels().get(p);
    String cue = place.cue().title();
    return switch (place.kind()) {
      case FIRST -> "the film's first shot";
      case LOCKED -> "locked on its frames from the last sheets";
      case ASKED -> "asked: " + asked(panel, place.cue());
      case RETURN -> "lands on " + withBar(place.cue()) + ", " + choice(p, place);
      case INTO_PANEL -> "asked: " + panel.cue();
      case LENGTH_ASKED -> "free, right after the previous panel's " + lengthBefore(p);
      case AFTER_LOCK -> "free, where the previous, locked panel ends";
      case FREE_ON_MARK -> "free, on a mark (" + cue + ")";
      case FREE_ON_BAR -> "free, on a bar line";
      case FREE_ON_BEAT -> "free, on a beat (" + cue + "): no bar line fits as well";
      case FREE_OFF_BEAT -> "free, off the beat: no beat fits between its neighbors";
    };
  }

  /** A timecode with the bar it lies in: the bar is not what was asked. */
  private static String asked(Panel panel, Cue cue) {
    return cue.kind() == Cue.Kind.TIMECODE ? panel.cue() + " (" + cue.title() + ")" : withBar(cue);
  }

  /** A candidate place in a few words. */
  static String placeName(Candidate place, AlignerInput input) {
    String cut = input.ruler().locateFrame(place.cut()).toString();
    String cue = withBar(place.cue());
    boolean onCue = place.cut() == place.cue().frame();
    return onCue ? cue : cue + " with the cut at " + cut;
  }

  private String lengthBefore(int p) {
    return input.panels().get(p - 1).length().map(Length::toString).orElse("length");
  }

  private static String withBar(Cue cue) {
    return cue.kind() == Cue.Kind.RETURN || cue.kind() == Cue.Kind.MARK
        ? cue.title() + " (" + cue.place() + ")"
        : cue.title();
  }

  /** How much choice there was among the returns between the panels before and after. */
  private String choice(int p, Candidate place) {
    long from = p == 0 ? 0 : layout.spans().get(p - 1).start();
    long to =
        p + 1 < layout.places().size() ? layout.spans().get(p + 1).endExclusive() : Long.MAX_VALUE;
    List<Cue> free =
        between(input.cues().counted(place.cue().name()), from, to).stream()
            .filter(cue -> isFree(cue, p))
            .toList();
    long certain = free.stream().filter(Cues::isCertain).count();
    if (!Cues.isCertain(place.cue())) {
      return certain == 0 ? "only likely: no certain return is free here" : "only likely";
    }
    return certain == 1 ? "the only certain return free here" : "one of " + certain + " free here";
  }

  /** Those of some cues, in order of time, that lie from one frame to before another. */
  private static List<Cue> between(List<Cue> cues, long from, long to) {
    int first = firstFrom(cues, from);
    return cues.subList(first, Math.max(first, firstFrom(cues, to)));
  }

  private static int firstFrom(List<Cue> cues, long frame) {
    int low = 0;
    int high = cues.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (cues.get(middle).frame() < frame) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Whether no other panel sits on it. */
  private boolean isFree(Cue cue, int p) {
    boolean own = layout.places().get(p).cue().id().equals(cue.id());
    return panelsOn.getOrDefault(cue.id(), 0L) == (own ? 1 : 0);
  }

  private String cut(int p, Candidate place) {
    if (place.isLate()) {
      return "; cut "
          + Prose.count(place.cut() - place.wantedCut(), "frame")
          + " too late for its reveals, because the panel before needs the time";
    }
    boolean early = place.cut() < place.cue().frame() && place.kind() != Candidate.Kind.FIRST;
    Optional<Reveal> reveal = place.rooms().stream().map(RevealRoom::reveal).findFirst();
    if (!early || reveal.isEmpty()) {
      return "";
    }
    boolean chosen = input.panels().get(p).cut() instanceof Panel.AutoCut;
    return "; cut at "
        + input.ruler().locateFrame(place.cut())
        + (chosen ? ", early enough for its reveals" : ", as asked");
  }
}
