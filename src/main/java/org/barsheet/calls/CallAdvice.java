package org.barsheet.calls;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.artwork.ClipCrop;
import org.barsheet.artwork.ColorWords;
import org.barsheet.artwork.KeyColor;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.FileNames;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.timing.Shot;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/** How one performer films themselves, and what they send (common practice, no source). */
final class CallAdvice {

  private final TimingSheet timing;
  private final Film film;
  private final SoundLayout sound;
  private final Performer performer;
  private final List<Appearance> seen;

  CallAdvice(TimingSheet timing, SoundLayout sound, Performer performer, List<Appearance> seen) {
    this.timing = timing;
    this.film = timing.plan().film();
    this.sound = sound;
    this.performer = performer;
    this.seen = seen;
  }

  List<String> playAlong() {
    String name = FileNames.withoutExtension(timing.plan().text().file());
    String handle = Appearance.HANDLE.toDecimal(0) + " s";
    return List.of(
        "Play "
            + FileNames.guideVideo(performer)
            + " (or "
            + FileNames.guide(name)
            + ", or "
            + FileNames.click(name)
            + ") through headphones from the very beginning, on a device other than the camera.",
        countIn(),
        clap(),
        "Clap once more, in frame, after the music ends.",
        "Be ready and still "
            + handle
            + " before you're seen, and stay still "
            + handle
            + " after. Record one continuous take, from before the count-in to after the last clap.");
  }

  private String countIn() {
    long clicks = sound.clicks().stream().filter(SoundLayout.Click::countIn).count();
    return "The count-in is "
        + clicks
        + (clicks == 1 ? " click" : " clicks")
        + " and begins at "
        + inFile(sound.clicks().get(0).at())
        + "; the music starts at "
        + inFile(musicStart())
        + "."
        + film.pop()
            .map(pop -> " The beep at " + inFile(Seconds.ZERO.minus(pop)) + " isn't part of it.")
            .orElse("");
  }

  /** A moment of the film in the time of the sound file. */
  private String inFile(Seconds inFilm) {
    return FileTime.minutes(inFilm.plus(Seconds.of(sound.headSeconds())));
  }

  private Seconds musicStart() {
    FilmClock clock = timing.clock();
    return clock.rate().startOf(clock.musicStartFrame());
  }

  /** On the pop or else the first click, unless the plan says where the clap is. */
  private String clap() {
    Seconds at = AgreedClap.inFilm(timing, sound, performer);
    return "Clap once, in frame, "
        + with()
        + inFile(at)
        + ", "
        + beforeMusic(at.minus(musicStart()))
        + ".";
  }

  /** {@code 4 s before the music starts}. */
  private static String beforeMusic(Seconds at) {
    BigDecimal seconds = at.toDecimal(3);
    return seconds.signum() == 0
        ? "as the music starts"
        : plain(seconds.abs())
            + (seconds.signum() < 0 ? " s before the music starts" : " s after the music starts");
  }

  private String with() {
    if (performer.clap().isPresent()) {
      return "at ";
    }
    return film.pop().isPresent() ? "with the beep at " : "with the first click at ";
  }

  List<String> frame() {
    List<String> lines = new ArrayList<>();
    for (Opening opening : seen.stream().map(Appearance::opening).distinct().toList()) {
      lines.add(shape(opening));
      backing(opening).ifPresent(lines::add);
    }
    lines.add("Look into the lens unless the director asks for something else.");
    lines.add("Wear nothing shiny, and no fine stripes or checks.");
    lines.add(
        "Set exposure, white balance and focus by hand and leave them alone; " + rate() + ".");
    return lines.stream().distinct().toList();
  }

  /** The rate the performer said, for the frames named below are counted at it. */
  private String rate() {
    return performer
        .clipRate()
        .map(said -> "shoot at " + said + " fps, as you told us, never at a variable rate")
        .orElse(
            "shoot at "
                + film.rate()
                + " fps if the camera has it, otherwise at the rate it has,"
                + " never at a variable rate");
  }

  private String shape(Opening opening) {
    double width = opening.rect().width();
    double height = opening.rect().height();
    String hold = height > width ? "in portrait" : height < width ? "in landscape" : "either way";
    return opening.name()
        + " is "
        + plain(BigDecimal.valueOf(width))
        + " squares of the artwork wide and "
        + plain(BigDecimal.valueOf(height))
        + " high: hold the camera "
        + hold
        + used(opening)
        + ".";
  }

  /** How much of the clip's frame is seen. */
  private String used(Opening opening) {
    return ClipCrop.of(performer, opening.rect())
        .map(
            crop ->
                "; only the middle "
                    + size(Math.round(crop.width()), Math.round(crop.height()))
                    + " of your "
                    + size(performer.clipWidth(), performer.clipHeight())
                    + " frame is used")
        .orElse("");
  }

  private static String size(long width, long height) {
    return width + " × " + height;
  }

  private Optional<String> backing(Opening opening) {
    return timing
        .plan()
        .workshop()
        .artwork()
        .model(opening.model())
        .map(Artwork.Model::backing)
        .filter(backing -> !backing.isEmpty())
        .map(
            backing ->
                "The backing is "
                    + backing
                    + ": wear nothing in that color."
                    + tooNear(backing).map(CallAdvice::clothes).orElse(""));
  }

  private Optional<KeyColor> tooNear(String backing) {
    return KeyColor.backing(backing, performer.clothes()).filter(KeyColor::isTooNear);
  }

  private static String clothes(KeyColor key) {
    return " The color you noted, "
        + ColorWords.named(key.nearest())
        + ", is too close to it: wear something else.";
  }

  List<String> send() {
    List<String> lines = new ArrayList<>();
    String clip = performer.clip().isEmpty() ? performer.name() + ".mov" : performer.clip();
    lines.add("One file named " + FileNames.safe(clip) + ", as the camera recorded it.");
    for (Appearance appearance : seen) {
      Shot shot = timing.shots().get(appearance.shot());
      lines.add("Panel " + shot.panel().name() + ": " + piece(appearance) + ".");
    }
    return lines;
  }

  /** Visible frames and a handle on either side; the clip's frames where the clap is known. */
  private String piece(Appearance appearance) {
    FrameSpan frames = appearance.frames();
    Seconds seenFor = film.rate().startOf(frames.length());
    String length =
        seenFor.plus(Appearance.HANDLE).plus(Appearance.HANDLE).toDecimal(1)
            + " s, including "
            + Appearance.HANDLE.toDecimal(0)
            + " s before and after";
    OptionalLong first = appearance.clipFrameAt(timing.clock(), frames.start());
    return first.isPresent()
        ? length + "; you're seen from frame " + first.getAsLong() + " of the clip"
        : length;
  }

  /** Without trailing zeros and without an exponent. */
  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
