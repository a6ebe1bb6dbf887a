package org.barsheet.sound;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.SoundLayout;

/**
 * The sound of some frames of a film, sample for sample what stands in the whole sound files.
 *
 * @param sheet the film
 * @param layout where everything lies in the whole files
 * @param from first sample of the whole files
 * @param length samples
 */
public record SoundPart(FilmSheet sheet, SoundLayout layout, long from, long length) {

  /** The strength of the guide under a click. */
  private static final float UNDER_CLICK = 0.7f;

  /**
   * The sound of some frames, from the sample nearest to the first frame's beginning.
   *
   * @param frames the first may lie before the film, within the head of the sound files
   */
  public static SoundPart of(FilmSheet sheet, FrameSpan frames) {
    SoundLayout layout = SoundLayout.of(sheet.timing());
    FrameRate rate = sheet.plan().film().rate();
    long from = layout.sampleAt(rate.startOf(frames.start()));
    return new SoundPart(
        sheet, layout, from, layout.sampleAt(rate.startOf(frames.endExclusive())) - from);
  }

  /** Writes the click track: one channel. */
  public void writeClick(OutputStream out) throws IOException {
    write(SoundFiles.clickTrack(sheet, layout), 1, "click track", out);
  }

  /**
   * Writes the guide: two channels.
   *
   * @param bank the guide played with a sound bank, where it is not to be our own
   */
  public void writeGuide(Optional<BankGuide> bank, OutputStream out) throws IOException {
    if (bank.isPresent()) {
      try (BankOrchestra orchestra = bank.get().orchestra(layout)) {
        write(SoundFiles.guide(sheet, layout, orchestra), 2, "guide", out);
      }
    } else {
      write(
          SoundFiles.guide(sheet, layout, new Orchestra(sheet.timing(), layout)), 2, "guide", out);
    }
  }

  /** Writes the guide, somewhat softer, with every click of the click track: two channels. */
  public void writeGuideWithClick(Optional<BankGuide> bank, OutputStream out) throws IOException {
    SampleSource click = SoundFiles.clickTrack(sheet, layout);
    if (bank.isPresent()) {
      try (BankOrchestra orchestra = bank.get().orchestra(layout)) {
        write(both(orchestra, click), 2, "guide with click", out);
      }
    } else {
      write(both(new Orchestra(sheet.timing(), layout), click), 2, "guide with click", out);
    }
  }

  private static SampleSource both(SampleSource orchestra, SampleSource click) {
    return (left, right, from, length) -> {
      orchestra.addTo(left, right, from, length);
      for (int i = 0; i < length; i++) {
        left[i] *= UNDER_CLICK;
        right[i] *= UNDER_CLICK;
      }
      click.addTo(left, right, from, length);
    };
  }

  private void write(SampleSource whole, int channels, String what, OutputStream out)
      throws IOException {
    new WaveFile(
            channels,
            length,
            layout.samplesSinceMidnight(sheet.plan().film()) + from,
            what + ": " + sheet.plan().title(),
            List.of())
        .write(new LaterSource(whole, from), out);
  }
}
