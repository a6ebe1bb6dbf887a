package org.barsheet.calls;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.FileNames;
import org.barsheet.plan.Performer;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/** What one performer does to the guide, in the time of its file (common practice, no source). */
final class PlayAlong {

  private final TimingSheet timing;
  private final SoundLayout sound;
  private final Performer performer;

  PlayAlong(TimingSheet timing, SoundLayout sound, Performer performer) {
    this.timing = timing;
    this.sound = sound;
    this.performer = performer;
  }

  List<String> lines() {
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
        + timing
            .plan()
            .film()
            .pop()
            .map(pop -> " The beep at " + inFile(Seconds.ZERO.minus(pop)) + " isn't part of it.")
            .orElse("");
  }

  /** A moment of the film in the time of the sound file. */
  private String inFile(Seconds inFilm) {
    return FileTime.minutes(inFilm.plus(Seconds.of(sound.headSeconds())));
  }

  private Seconds musicStart() {
    return timing.clock().rate().startOf(timing.clock().musicStartFrame());
  }

  private String clap() {
    Seconds at = AgreedClap.inFilm(timing, sound, performer);
    Optional<String> with = new AgreedClap(timing, sound).with(at);
    return "Clap once, in frame, "
        + with.map(heard -> "with " + heard + ", ").orElse("")
        + "at "
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
        : seconds.abs().stripTrailingZeros().toPlainString()
            + (seconds.signum() < 0 ? " s before the music starts" : " s after the music starts");
  }
}
