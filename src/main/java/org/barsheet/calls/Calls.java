package org.barsheet.calls;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.MusicRuler;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.OfShot;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Reveal;
import org.barsheet.timing.Shot;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/** Works out everybody's call. */
public final class Calls {

  private final TimingSheet timing;
  private final List<PlannedReveal> reveals;
  private final List<Appearance> appearances;
  private final Film film;
  private final MusicRuler ruler;
  private final SoundLayout sound;

  private Calls(TimingSheet timing, List<PlannedReveal> reveals, List<Appearance> appearances) {
    this.timing = timing;
    this.reveals = reveals;
    this.appearances = appearances;
    this.film = timing.plan().film();
    this.ruler = new MusicRuler(timing.music(), timing.clock());
    this.sound = SoundLayout.of(timing);
  }

  /**
   * A call for each performer, in the plan's order.
   *
   * @param reveals every reveal on its frames
   * @param appearances every performer's, in order of shot
   */
  public static List<Call> of(
      TimingSheet timing, List<PlannedReveal> reveals, List<Appearance> appearances) {
    Calls calls = new Calls(timing, reveals, appearances);
    return timing.plan().performers().stream().map(calls::call).toList();
  }

  private Call call(Performer performer) {
    List<Appearance> seen =
        appearances.stream()
            .filter(appearance -> appearance.performer().name().equals(performer.name()))
            .toList();
    List<CallFraming> framings = framings(performer, seen);
    CallAdvice advice = new CallAdvice(timing.plan(), performer);
    return new Call(
        performer,
        (performer.part().isEmpty() ? "no part of the score" : performer.part())
            + " · times in minutes:seconds of the sound file",
        seen.stream().map(this::line).toList(),
        framings,
        List.of(
            new Call.Section("Play along", new PlayAlong(timing, sound, performer).lines()),
            new Call.Section(Call.FRAME_HEADING, advice.frame(framings)),
            new Call.Section(
                "Behind you, and light",
                new BackdropAdvice(timing.plan(), performer, seen).lines()),
            new Call.Section("Sound", advice.sound()),
            new Call.Section("Send", advice.send())),
        advice.toFillIn());
  }

  /** One an opening they are seen in. */
  private List<CallFraming> framings(Performer performer, List<Appearance> seen) {
    Pose pose =
        timing.music().score().parts().stream()
            .filter(part -> part.name().equals(performer.part()))
            .findFirst()
            .map(Pose::of)
            .orElse(Pose.NOTHING_HELD);
    Map<Opening, List<String>> panels = new LinkedHashMap<>();
    for (Appearance appearance : seen) {
      panels
          .computeIfAbsent(appearance.opening(), opening -> new ArrayList<>())
          .add(timing.shots().get(appearance.shot()).panel().name());
    }
    return panels.entrySet().stream()
        .map(one -> CallFraming.of(performer, one.getKey(), one.getValue(), pose))
        .toList();
  }

  private CallAppearance line(Appearance appearance) {
    Shot shot = timing.shots().get(appearance.shot());
    FrameSpan frames = appearance.frames();
    Seconds from = inSoundFile(frames.start());
    Seconds until = inSoundFile(frames.endExclusive());
    return new CallAppearance(
        shot.panel().name(),
        shot.panel().action(),
        appearance.opening().name(),
        bars(frames),
        FileTime.minutes(from.minus(Appearance.HANDLE)),
        FileTime.minutes(from),
        FileTime.minutes(until),
        FileTime.minutes(until.plus(Appearance.HANDLE)),
        sounding(appearance),
        opensFirst(appearance));
  }

  private Seconds inSoundFile(long frame) {
    return film.rate().startOf(frame).plus(Seconds.of(sound.headSeconds()));
  }

  /** {@code 3 to 5}: the bars that a run of film frames lies in. */
  private String bars(FrameSpan frames) {
    int first = ruler.locateFrame(frames.start()).bar();
    int last = ruler.locateFrame(Math.max(frames.start(), frames.endExclusive() - 1)).bar();
    return first == last ? Integer.toString(first) : first + " to " + last;
  }

  private static String sounding(Appearance appearance) {
    if (appearance.performer().part().isEmpty() || appearance.sounding() == 0) {
      return "silent";
    }
    long percent = Math.round(100 * appearance.sounding());
    return percent >= 100 ? "plays" : "plays " + percent + " % of the time";
  }

  /** Where they are seen first, in a panel in which the opening opens. */
  private String opensFirst(Appearance appearance) {
    return OfShot.reveals(reveals, appearance.shot()).stream()
        .filter(reveal -> reveal.opening().name().equals(appearance.opening().name()))
        .findFirst()
        .map(reveal -> opensFirst(reveal.reveal().way(), reveal.opening().motion()))
        .orElse("it is already open");
  }

  private static String opensFirst(Reveal.Way way, Opening.Motion motion) {
    return way == Reveal.Way.OPENS ? opensFirst(motion) : "it closes";
  }

  private static String opensFirst(Opening.Motion motion) {
    if (motion instanceof Opening.Hinged hinged) {
      return edgeOpposite(hinged.hinge());
    }
    if (motion instanceof Opening.Slides slides) {
      return edgeOpposite(slides.toward());
    }
    return motion instanceof Opening.Iris ? "the middle" : "all of it at once";
  }

  private static String edgeOpposite(Opening.Side side) {
    return switch (side) {
      case LEFT -> "the right edge";
      case RIGHT -> "the left edge";
      case TOP -> "the bottom edge";
      case BOTTOM -> "the top edge";
    };
  }
}
