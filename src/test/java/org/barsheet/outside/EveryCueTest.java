package org.barsheet.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.cues.FilmClock;
import org.barsheet.film.FilmSheet;
import org.barsheet.motif.Occurrence;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every cue of a film stands on the frame that a second reader of its score, which shares none of
 * the main code, works out in whole numbers from the file's bytes.
 */
class EveryCueTest {

  private static final Path DEMO = Path.of("scores", "lamplighters-quay.yaml");

  @TempDir Path folder;

  @Test
  void of_the_demo() throws IOException {
    FilmSheet film = Production.film(DEMO, Progress.SILENT);
    assertThat(kinds(film)).contains(Cue.Kind.RETURN, Cue.Kind.MARK, Cue.Kind.BAR);
    agree(film);
  }

  @Test
  void of_a_waltz_at_a_film_rate() throws IOException {
    agree(
        film(
            "classical/satie-gymnopedie-no1.mid",
            "23.976",
            """
            motifs:
              sway: {notes: "F#5/4 A5/4 G5/4 F#5/4 C#5/4 B4/4 C#5/4 D5/4 A4/2+4"}
            panels:
              - {panel: 1, action: One}
              - {panel: 2, action: Two, cue: bar 5}
              - {panel: 3, action: Three, cue: bar 13 beat 2}
              - {panel: 4, action: Four, cue: bar 22}
              - {panel: 5, action: Five, cue: bar 40}
            """));
  }

  @Test
  void of_a_piece_with_dense_tempo_at_a_drop_frame_rate() throws IOException {
    agree(
        film(
            "classical/fur-elise.mid",
            "29.97df",
            """
            motifs:
              turn: {notes: "E5/16 Eb5/16 E5/16 Eb5/16 E5/16 B4/16 D5/16 C5/16 A4/8"}
            panels:
              - {panel: 1, action: One}
              - {panel: 2, action: Two, cue: turn 3}
              - {panel: 3, action: Three, cue: turn}
              - {panel: 4, action: Four, cue: bar 40}
              - {panel: 5, action: Five, cue: bar 60 beat 2}
            """));
  }

  private FilmSheet film(String score, String rate, String rest) throws IOException {
    Path file = RegistryScores.score(score).toAbsolutePath();
    String plan =
        """
        title: Five panels
        score: "%s"
        film: {frame-rate: %s, music-starts: 2 s}
        """
            .formatted(file, rate);
    return Production.film(
        Files.writeString(folder.resolve("five.yaml"), plan + rest), Progress.SILENT);
  }

  private static List<Cue.Kind> kinds(FilmSheet film) {
    return film.timing().cues().stream().map(Cue::kind).distinct().toList();
  }

  private static void agree(FilmSheet film) throws IOException {
    SecondReader second = new SecondReader(film.plan().music().score());
    int finer = film.timing().music().score().ticksPerQuarter() / second.division;
    assertThat(film.timing().cues()).hasSizeGreaterThan(4);
    for (Cue cue : film.timing().cues()) {
      if (cue.occurrence().isPresent()) {
        Occurrence found = cue.occurrence().get();
        assertThat(second.onsets)
            .contains(found.startTick() / finer, found.notes().accentTick() / finer);
        agree(film, second, cue.title(), found.startTick() / finer, cue.frame());
        agree(film, second, cue.title(), found.notes().accentTick() / finer, cue.accentFrame());
      }
    }
    everyMark(film, second);
    everyBar(film, second);
  }

  private static void everyMark(FilmSheet film, SecondReader second) {
    List<Cue> marks =
        film.timing().cues().stream().filter(cue -> cue.kind() == Cue.Kind.MARK).toList();
    assertThat(marks).hasSameSizeAs(second.marks);
    for (int i = 0; i < marks.size(); i++) {
      agree(film, second, marks.get(i).title(), second.marks.get(i), marks.get(i).frame());
    }
  }

  /** The bars that cues are counted in begin on the second reader's frames, and so do the cues. */
  private static void everyBar(FilmSheet film, SecondReader second) {
    List<Long> starts = second.barStarts();
    List<FilmBar> bars = film.timing().bars();
    assertThat(bars).hasSizeGreaterThanOrEqualTo(starts.size());
    for (int i = 0; i < starts.size(); i++) {
      FilmBar bar = bars.get(i);
      agree(film, second, "bar " + bar.bar().number(), starts.get(i), bar.startFrame());
      for (Cue cue : film.timing().cues()) {
        if (cue.kind() == Cue.Kind.BAR
            && cue.place().isDownbeat()
            && cue.place().bar() == bar.bar().number()) {
          assertThat(cue.frame()).as(cue.title()).isEqualTo(bar.startFrame());
        }
      }
    }
  }

  private static void agree(
      FilmSheet film, SecondReader second, String what, long tick, long frame) {
    FilmClock clock = film.timing().clock();
    FrameRate rate = clock.rate();
    assertThat(frame)
        .as(what)
        .isEqualTo(
            clock.musicStartFrame() + second.frame(tick, rate.numerator(), rate.denominator()));
  }
}
