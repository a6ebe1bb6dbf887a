package org.barsheet.sound;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmClock;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.SoundLayout.Click;

/**
 * The sound players hear: 48 kHz, 16 bits, the same bytes for the same film. Both files have the
 * same layout, carry the film's cues as {@code cue } points and the timecode of their first sample.
 */
public final class SoundFiles {

  private SoundFiles() {}

  /** Writes the click track: count-in and every felt beat, downbeats accented, one channel. */
  public static void writeClick(FilmSheet sheet, OutputStream out) throws IOException {
    SoundLayout layout = SoundLayout.of(sheet.timing());
    file(sheet, layout, 1, "click track").write(clickTrack(sheet, layout), out);
  }

  /** The pop and every click. */
  static SampleSource clickTrack(FilmSheet sheet, SoundLayout layout) {
    Pop pop = new Pop(layout, sheet.plan().film());
    ClickTrack clicks = new ClickTrack(layout, layout.clicks());
    return (left, right, from, length) -> {
      clicks.addTo(left, right, from, length);
      pop.addTo(left, right, from, length);
    };
  }

  /** Writes the guide: count-in, then the score played by a small orchestra, two channels. */
  public static void writeGuide(FilmSheet sheet, OutputStream out) throws IOException {
    SoundLayout layout = SoundLayout.of(sheet.timing());
    writeGuide(sheet, layout, new Orchestra(sheet.timing(), layout), out);
  }

  /** Writes the same, played with the sounds of a bank. */
  public static void writeGuide(BankGuide guide, OutputStream out) throws IOException {
    SoundLayout layout = SoundLayout.of(guide.sheet().timing());
    try (BankOrchestra orchestra = guide.orchestra(layout)) {
      writeGuide(guide.sheet(), layout, orchestra, out);
    }
  }

  private static void writeGuide(
      FilmSheet sheet, SoundLayout layout, SampleSource orchestra, OutputStream out)
      throws IOException {
    file(sheet, layout, 2, "guide").write(guide(sheet, layout, orchestra), out);
  }

  /** The pop, the count-in and the orchestra. */
  static SampleSource guide(FilmSheet sheet, SoundLayout layout, SampleSource orchestra) {
    Pop pop = new Pop(layout, sheet.plan().film());
    List<Click> countIn = layout.clicks().stream().filter(Click::countIn).toList();
    ClickTrack clicks = new ClickTrack(layout, countIn);
    return (left, right, from, length) -> {
      orchestra.addTo(left, right, from, length);
      clicks.addTo(left, right, from, length);
      pop.addTo(left, right, from, length);
    };
  }

  private static WaveFile file(FilmSheet sheet, SoundLayout layout, int channels, String what) {
    Film film = sheet.plan().film();
    String description =
        what
            + ", head "
            + layout.headSeconds()
            + " s, "
            + film.rate()
            + " fps, film frame 0 is "
            + film.firstFrame()
            + ": "
            + sheet.plan().title();
    return new WaveFile(
        channels,
        layout.lengthSamples(),
        layout.samplesSinceMidnight(film),
        description,
        cuePoints(sheet, layout));
  }

  private static List<CuePoint> cuePoints(FilmSheet sheet, SoundLayout layout) {
    FilmClock clock = sheet.timing().clock();
    List<CuePoint> points = new ArrayList<>();
    points.add(new CuePoint(layout.sampleAt(layout.clicks().get(0).at()), "count-in"));
    new Pop(layout, sheet.plan().film())
        .start()
        .ifPresent(sample -> points.add(new CuePoint(sample, "pop")));
    points.add(new CuePoint(layout.sampleAt(Seconds.ZERO), "film frame 0"));
    for (Cue cue : sheet.timing().cues()) {
      points.add(new CuePoint(layout.sampleAt(clock.filmTime(cue.at())), cue.title()));
      if (cue.hasAccentElsewhere()) {
        long accent = layout.sampleAt(clock.filmTime(cue.accentAt()));
        points.add(new CuePoint(accent, cue.title() + " accent"));
      }
    }
    points.removeIf(point -> point.sample() < 0 || point.sample() >= layout.lengthSamples());
    points.sort(Comparator.comparingLong(CuePoint::sample));
    return points;
  }
}
