package org.barsheet.production;

import java.util.Locale;
import org.barsheet.clock.FrameSpan;
import org.barsheet.cues.MusicRuler;
import org.barsheet.film.FilmSheet;
import org.barsheet.movie.FlashVerdict;
import org.barsheet.plan.Film;

/** What is said of a movie. */
final class MovieWords {

  private static final String CAUTION =
      """
      Flashing images can hurt people with photosensitive epilepsy. This was measured on the drawn
      frames by the rule of WCAG 2.3.1 (no more than three flashes a second over a quarter of a
      10-degree field). It warns and certifies nothing: have the finished film analyzed.
      """;

  private MovieWords() {}

  /** What the movie's worst second is, and what to do about it. */
  static String flashing(FilmSheet film, FlashVerdict worst) {
    if (worst.flashes() == 0) {
      return "No large part of the movie flashes; have the finished film analyzed.";
    }
    String most = worst.isOver() ? "more than three" : String.valueOf(worst.flashes());
    String flashes =
        most + (worst.red() ? " red" : "") + (most.equals("1") ? " flash" : " flashes");
    String share = String.format(Locale.ROOT, "%.0f %%", 100 * worst.share());
    return "The movie's worst second has "
        + flashes
        + " over "
        + share
        + " of a field of view ("
        + place(film, worst.endFrame())
        + (worst.isOver()
            ? "): too many (WCAG 2.3.1). Spread them, and have the finished film analyzed."
            : "); three are allowed (WCAG 2.3.1). Have the finished film analyzed.");
  }

  /** {@code panel 20, until 01:02:11:04, bar 57}. */
  private static String place(FilmSheet film, long frame) {
    String timecode = film.plan().film().timecode(frame).toString();
    if (frame < 0) {
      return "until " + timecode;
    }
    String panel =
        film.timing().shotAt(frame).map(shot -> "panel " + shot.panel().name() + ", ").orElse("");
    MusicRuler ruler = new MusicRuler(film.timing().music(), film.timing().clock());
    return panel + "until " + timecode + ", bar " + ruler.locateFrame(frame).bar();
  }

  /** The text beside the movie. */
  static String about(
      FilmSheet film,
      String file,
      String size,
      FrameSpan frames,
      MovieAsk ask,
      FlashVerdict worst) {
    Film settings = film.plan().film();
    StringBuilder text = new StringBuilder();
    text.append(film.plan().title()).append(": the film so far\n\n");
    text.append(file).append(", ").append(size).append(", ");
    text.append(settings.rate().exactName()).append(" fps\n");
    text.append("Film frames ").append(frames.start()).append(" to ");
    text.append(frames.endExclusive() - 1).append(" (").append(settings.timecode(frames.start()));
    text.append(" to ").append(settings.timecode(frames.endExclusive() - 1)).append(")\n");
    text.append("Sound: ").append(sound(film, ask)).append('\n');
    if (!ask.clean()) {
      text.append(
          """
          Below the image: timecode, frame, panel, bar and beat; ♦ marks the frame that something lands on.
          The cells in the corner are for programs: 6 rows of 8, white for 1: 24 bits of the frame (two's
          complement), 16 of the shot from 1, 8 of the sum of these five bytes, exclusive or 5A.
          """);
    }
    text.append('\n').append(CAUTION).append(flashing(film, worst)).append('\n');
    return text.toString();
  }

  private static String sound(FilmSheet film, MovieAsk ask) {
    String music =
        film.plan()
            .music()
            .recording()
            .map(recording -> "the recording " + recording.file().getFileName())
            .orElse("the guide");
    return music + (ask.click() ? "; pop and click as a second track" : "");
  }
}
