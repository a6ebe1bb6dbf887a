package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Extras;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The production's own recording moves the film: one that the plan names, or the viewer's. */
class ReviewPageRecordingTest {

  private static final String NAME = "rough mix 1 – größer #2.wav";

  /** Frame shown, frame that the clock gives, film time, and the recording's own time. */
  private static final String READING =
      "const done = arguments[0]; const r = reviewPage.recording;"
          + "const time = r.seconds.bind(r); let given;"
          + "r.seconds = () => { given = time(); return given; };"
          + "const timer = setInterval(() => { if (r.sound.currentTime > r.from + 0.4) {"
          + "  clearInterval(timer); done([reviewPage.clock.frame,"
          + "    Math.floor(given * 24 + 1e-6), given, r.sound.currentTime]); } }, 30);";

  private final DemoPage demo = DemoPage.open();
  private final Browser browser = demo.browser();
  private final FilmSheet film = demo.film();

  /** Makes a film that names a recording in a folder beside the plan, and opens its page. */
  private Path planned(Path folder, String starts) throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), folder.resolve("quay.mid"));
    Path sound = Files.createDirectories(folder.resolve("sound")).resolve(NAME);
    Files.write(sound, WaveBytes.silence(20));
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24, music-starts: 2 s}\n"
            + "music: {recording: 'sound/"
            + NAME
            + "'"
            + starts
            + "}\n"
            + "panels: [{panel: 1, action: Fog}]\n");
    Production.make(plan, folder.resolve("out/sheets"), Extras.NONE, Progress.SILENT);
    browser.requests();
    browser.complaints();
    return sound;
  }

  private Path open(Path folder) {
    Path page = folder.resolve("out/sheets/plan.html");
    browser.open(page);
    return page;
  }

  private List<?> reading(long from) {
    browser.run(
        "reviewPage.seek(arguments[0]); reviewPage.recording.from = arguments[0] / 24 - reviewPage.recording.starts",
        from);
    return (List<?>) browser.later(READING);
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  @Test
  void the_recording_that_the_plan_names_plays_and_seeks_with_the_photograph(@TempDir Path folder)
      throws IOException {
    Path sound = planned(folder, "");
    Path page = open(folder);
    browser.press("do-play");
    for (long from : new long[] {48, 240, 96}) {
      List<?> reading = reading(from);
      assertThat(reading.get(0)).isEqualTo(reading.get(1));
      assertThat(number(reading.get(2))).isCloseTo(2 + number(reading.get(3)), within(0.1));
      assertThat(number(reading.get(2))).isBetween(from / 24.0 + 0.3, from / 24.0 + 2);
    }
    assertThat(browser.text("#sound-summary")).startsWith(NAME);
    assertThat(browser.requests())
        .allMatch(List.of(page.toUri().toString(), sound.toUri().toString())::contains)
        .contains(sound.toUri().toString());
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void it_begins_where_the_plan_says(@TempDir Path folder) throws IOException {
    planned(folder, ", recording-starts: \"00:59:59:12\"");
    open(folder);
    browser.press("do-sound");
    assertThat(browser.text(".recording")).contains("at 00:59:59:12 (frame -12)");
    browser.later(
        "const timer = setInterval(() => { if (document.querySelector('.recording').textContent"
            + ".includes('ends at')) { clearInterval(timer); arguments[0](0); } }, 20);");
    double missing = film.timing().lengthFrames() / 24.0 - 19.5;
    assertThat(browser.text(".recording"))
        .contains("ends at 01:00:19:12")
        .contains(String.format(Locale.ROOT, "%.1f s before the music ends", missing));
    browser.press("do-play");
    List<?> reading = reading(24);
    assertThat(reading.get(0)).isEqualTo(reading.get(1));
    assertThat(number(reading.get(2))).isCloseTo(number(reading.get(3)) - 0.5, within(0.1));
    JsonObject recording =
        JsonParser.parseString(Files.readString(folder.resolve("out/sheets/timing.json")))
            .getAsJsonObject()
            .getAsJsonObject("film")
            .getAsJsonObject("recording");
    assertThat(recording.get("file").getAsString()).isEqualTo(NAME);
    assertThat(recording.getAsJsonObject("startSeconds").get("exact").getAsString())
        .isEqualTo("-1/2");
  }

  @Test
  void a_recording_that_is_not_there_is_told_and_the_score_sounds(@TempDir Path folder)
      throws IOException {
    Files.delete(planned(folder, ""));
    open(folder);
    browser.later(
        "const timer = setInterval(() => { if (document.getElementById('sound-told').textContent)"
            + " { clearInterval(timer); arguments[0](0); } }, 20);");
    assertThat(browser.text("#sound-told"))
        .contains(NAME + " doesn't play")
        .contains("../../sound/" + NAME)
        .contains("plays the score's notes instead");
    browser.press("do-play");
    browser.later(
        "const timer = setInterval(() => { if (reviewPage.clock.frame > 6)"
            + " { clearInterval(timer); arguments[0](0); } }, 20);");
    assertThat(browser.run("return reviewPage.sounding.context.currentTime > 0")).isEqualTo(true);
    assertThat(browser.text("#sound-summary")).startsWith("score");
  }

  @Test
  void the_page_of_a_plan_without_a_recording_admits_no_sound_from_a_disk() {
    String policy =
        (String) browser.run("return document.querySelector('meta[http-equiv]').content");
    assertThat(policy).contains("media-src blob:;").doesNotContain("file:").doesNotContain("self");
  }

  /** The click is heard over a recording, on the beats that the page shows. */
  @Test
  void the_click_sounds_over_a_recording(@TempDir Path folder) throws IOException {
    planned(folder, "");
    open(folder);
    browser.keys("c");
    browser.run("reviewPage.seek(48)");
    browser.press("do-play");
    List<?> onsets =
        (List<?>)
            browser.later(
                "const done = arguments[0]; const { context, orchestra } = reviewPage.sounding;"
                    + "const ear = context.createAnalyser(); orchestra.clickSeat.connect(ear);"
                    + "const samples = new Float32Array(ear.fftSize); const heard = []; let loud = false;"
                    + "const timer = setInterval(() => { ear.getFloatTimeDomainData(samples);"
                    + "  const now = samples.some((s) => Math.abs(s) > 0.1);"
                    + "  if (now && !loud) heard.push(reviewPage.recording.seconds());"
                    + "  loud = now; if (heard.length === 4) { clearInterval(timer); done(heard); } }, 5);");
    List<Double> beats =
        film.timing().music().beats().stream()
            .map(beat -> 2 + film.timing().music().tempo().secondsAt(beat.tick()).toDouble())
            .toList();
    for (Object onset : onsets) {
      assertThat(beats).anySatisfy(beat -> assertThat(number(onset)).isCloseTo(beat, within(0.12)));
    }
  }

  @Test
  void a_recording_of_the_viewers_own_moves_the_film(@TempDir Path other) throws IOException {
    Path sound = other.resolve("sound.wav");
    Files.write(sound, WaveBytes.silence(3));
    browser.press("do-sound");
    browser.find("[data-value='recording']").click();
    browser.find("#recording-file").sendKeys(sound.toString());
    browser.run("reviewPage.seek(reviewPage.film.musicStart)");
    browser.press("do-play");
    List<?> reading =
        (List<?>)
            browser.later(
                "const done = arguments[0]; const r = reviewPage.recording;"
                    + "const time = r.seconds.bind(r); let given;"
                    + "r.seconds = () => { given = time(); return given; };"
                    // As the picture is shown, the time asked for it was the last one asked.
                    + "reviewPage.clock.listeners.push((frame) => { if (r.sound.currentTime > 0.5) {"
                    + "  done([frame, Math.floor(given * 24 + 1e-6), given, r.sound.currentTime]);"
                    + "} });");
    assertThat(reading.get(0)).isEqualTo(reading.get(1));
    double inFilm = ((Number) reading.get(2)).doubleValue();
    double musicStarts = film.timing().clock().musicStartFrame() / 24.0;
    assertThat(inFilm)
        .isBetween(musicStarts, musicStarts + ((Number) reading.get(3)).doubleValue());
  }

  @Test
  void another_recording_chosen_while_one_plays_silences_the_first(@TempDir Path other)
      throws IOException {
    browser.press("do-sound");
    browser.find("[data-value='recording']").click();
    browser.run("reviewPage.seek(reviewPage.film.musicStart)");
    for (String name : List.of("first.wav", "second.wav")) {
      Path sound = Files.write(other.resolve(name), WaveBytes.silence(20));
      browser.run("window.before = reviewPage.recording.sound");
      browser.find("#recording-file").sendKeys(sound.toString());
      if (name.startsWith("first")) {
        browser.press("do-play");
      }
      browser.later(
          "const done = arguments[0]; const timer = setInterval(() => {"
              + "const { sound } = reviewPage.recording; if (sound !== window.before"
              + " && sound.currentTime > 0.1) { clearInterval(timer); done(0); } }, 20);");
    }
    assertThat(browser.run("return window.before.paused")).isEqualTo(true);
    assertThat(browser.run("return reviewPage.recording.sound.paused")).isEqualTo(false);
  }
}
