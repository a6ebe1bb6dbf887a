package org.barsheet.exposure;

import java.math.BigInteger;
import java.util.List;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Reveal;
import org.barsheet.timing.MusicRuler;
import org.barsheet.timing.Shot;

/** Works out everybody's call. */
public final class Calls {

  private final FilmSheet sheet;
  private final Film film;
  private final MusicRuler ruler;
  private final SoundLayout sound;

  private Calls(FilmSheet sheet) {
    this.sheet = sheet;
    this.film = sheet.timing().plan().film();
    this.ruler = new MusicRuler(sheet.timing().music(), sheet.timing().clock());
    this.sound = SoundLayout.of(sheet);
  }

  /** A call for each performer, in the plan's order. */
  public static List<Call> of(FilmSheet sheet) {
    Calls calls = new Calls(sheet);
    return sheet.timing().plan().performers().stream().map(calls::call).toList();
  }

  private Call call(Performer performer) {
    List<Appearance> seen =
        sheet.appearances().stream()
            .filter(appearance -> appearance.performer().name().equals(performer.name()))
            .toList();
    CallAdvice advice = new CallAdvice(sheet, sound, performer, seen);
    return new Call(
        performer,
        (performer.part().isEmpty() ? "no part of the score" : performer.part())
            + " · times in minutes:seconds of the sound file",
        seen.stream().map(this::line).toList(),
        List.of(
            new Call.Section("Play along", advice.playAlong()),
            new Call.Section("Picture", advice.picture()),
            new Call.Section("Send", advice.send())));
  }

  private CallAppearance line(Appearance appearance) {
    Shot shot = sheet.timing().shots().get(appearance.shot());
    FrameSpan frames = appearance.frames();
    Seconds from = inSoundFile(frames.start());
    Seconds until = inSoundFile(frames.endExclusive());
    return new CallAppearance(
        shot.panel().name(),
        shot.panel().action(),
        appearance.opening().name(),
        bars(frames),
        minutes(from.minus(Appearance.HANDLE)),
        minutes(from),
        minutes(until),
        minutes(until.plus(Appearance.HANDLE)),
        until.minus(from).toDecimal(1) + " s, " + frames.length() + " f",
        film.timecode(frames.start()).toString(),
        sounding(appearance),
        opensFirst(appearance));
  }

  private Seconds inSoundFile(long frame) {
    return film.rate().startOf(frame).plus(Seconds.of(sound.headSeconds()));
  }

  /** {@code 1:02.4}, to the nearest tenth. */
  static String minutes(Seconds time) {
    BigInteger tenths = time.toDecimal(1).movePointRight(1).toBigInteger().max(BigInteger.ZERO);
    long all = tenths.longValueExact();
    long seconds = all / 10 % 60;
    return all / 600 + ":" + (seconds < 10 ? "0" : "") + seconds + "." + all % 10;
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
    return percent >= 100 ? "sounds" : "sounds " + percent + " % of it";
  }

  /** Where they are seen first, in a panel in which the opening opens. */
  private String opensFirst(Appearance appearance) {
    return sheet.reveals().stream()
        .filter(reveal -> reveal.shot() == appearance.shot())
        .filter(reveal -> reveal.opening().name().equals(appearance.opening().name()))
        .findFirst()
        .map(reveal -> opensFirst(reveal.reveal().way(), reveal.opening().motion()))
        .orElse("it stands open");
  }

  private static String opensFirst(Reveal.Way way, Opening.Motion motion) {
    return way == Reveal.Way.OPENS ? opensFirst(motion) : "it closes";
  }

  private static String opensFirst(Opening.Motion motion) {
    if (motion instanceof Opening.Hinged hinged) {
      return edgeOpposite(hinged.hinge());
    }
    if (motion instanceof Opening.Slides slides) {
      return edgeOpposite(slides.towards());
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
