package org.barsheet.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Timecode;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Extras;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.barsheet.pulse.Beat;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** The page in the system's browser, opened from a file: it plays, steps and sounds as planned. */
class ReviewPageInBrowserTest {

  private static final int SAMPLE_RATE = 48_000;

  private final DemoPage demo = DemoPage.open();
  private final Browser browser = demo.browser();
  private final FilmSheet film = demo.film();

  private long frame() {
    return Long.parseLong(browser.text("#frame-number"));
  }

  /** What the page says of a frame. */
  private List<?> shown(long frame) {
    return (List<?>)
        browser.run(
            "reviewPage.seek(arguments[0]);"
                + "return ['timecode', 'frame-number', 'bar-and-beat', 'in-shot', 'fact-under']"
                + ".map((id) => document.getElementById(id).textContent);",
            frame);
  }

  @Test
  void at_forty_moments_frame_bar_panel_and_photograph_are_those_of_timing_json() {
    Random random = new Random(8);
    long length = demo.timing().getAsJsonObject("film").get("lengthFrames").getAsLong();
    for (int i = 0; i < 40; i++) {
      long frame = random.nextLong(length);
      List<?> shown = shown(frame);
      assertThat(shown.get(0)).isEqualTo(timecode(frame));
      assertThat(shown.get(1)).isEqualTo(Long.toString(frame));
      assertThat((String) shown.get(2)).startsWith(bar(frame));
      JsonObject shot = shot(frame);
      long inShot = frame - shot.get("startFrame").getAsLong() + 1;
      long frames = shot.get("endFrameExclusive").getAsLong() - shot.get("startFrame").getAsLong();
      assertThat(shown.get(3))
          .isEqualTo(
              "panel " + shot.get("panel").getAsString() + ", frame " + inShot + " of " + frames);
      for (String photograph : photographs(shot, frame)) {
        assertThat((String) shown.get(4)).contains(photograph);
      }
    }
  }

  private String timecode(long frame) {
    Timecode first =
        Timecode.parse(
            FrameRate.parse("24"),
            demo.timing().getAsJsonObject("film").get("firstFrame").getAsString());
    return Timecode.ofFrame(first.rate(), first.frame() + frame).toString();
  }

  private String bar(long frame) {
    String bar = "before the music";
    for (JsonElement each : demo.timing().getAsJsonArray("bars")) {
      JsonObject candidate = each.getAsJsonObject();
      if (candidate.get("startFrame").getAsLong() <= frame) {
        bar = "bar " + candidate.get("number").getAsInt() + " beat ";
      }
    }
    return bar;
  }

  private JsonObject shot(long frame) {
    for (JsonElement each : demo.timing().getAsJsonArray("shots")) {
      if (each.getAsJsonObject().get("endFrameExclusive").getAsLong() > frame) {
        return each.getAsJsonObject();
      }
    }
    throw new AssertionError("no shot at frame " + frame);
  }

  private static List<String> photographs(JsonObject shot, long frame) {
    List<String> names = new ArrayList<>();
    for (JsonElement reveal : shot.getAsJsonArray("reveals")) {
      JsonArray exposures = reveal.getAsJsonObject().getAsJsonArray("exposures");
      String name = "";
      for (JsonElement each : exposures) {
        if (each.getAsJsonObject().get("startFrame").getAsLong() <= frame) {
          name = each.getAsJsonObject().get("photograph").getAsString();
        }
      }
      names.add(name);
    }
    return names;
  }

  /** SMPTE ST 12-1 skips labels at these rates; the page counts as {@link Timecode} does. */
  @ParameterizedTest
  @ValueSource(strings = {"29.97df", "59.94df", "23.976"})
  void labels_of_every_counting_are_right(String rate, @TempDir Path other) throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), other.resolve("quay.mid"));
    Path plan = other.resolve("plan.yaml");
    String film = "film: {frame-rate: " + rate + ", first-frame: \"00:58:30:00\"}\n";
    Files.writeString(
        plan, "title: Quay\nscore: quay.mid\n" + film + "panels: [{panel: 1, action: Fog}]\n");
    Production.make(plan, other.resolve("out"), Extras.NONE, Progress.SILENT);
    browser.open(other.resolve("out/plan.html"));
    List<?> labels =
        (List<?>)
            browser.run("return Array.from({length: 4000}, (_, i) => reviewPage.timecode(i));");
    FrameRate counting = FrameRate.parse(rate);
    long first = Timecode.parse(counting, "00:58:30:00").frame();
    for (int i = 0; i < labels.size(); i++) {
      assertThat(labels.get(i)).isEqualTo(Timecode.ofFrame(counting, first + i).toString());
    }
  }

  @Test
  void it_steps_by_frames_bars_cues_and_panels() {
    browser.press("do-frame-on");
    browser.press("do-frame-on");
    browser.press("do-frame-back");
    assertThat(frame()).isEqualTo(1);
    browser.press("do-bar-on");
    assertThat(frame()).isEqualTo(film.timing().bars().get(0).startFrame());
    browser.keys(Keys.ARROW_DOWN);
    assertThat(frame()).isEqualTo(film.timing().bars().get(1).startFrame());
    browser.keys(Keys.PAGE_DOWN);
    assertThat(frame()).isEqualTo(film.timing().shots().get(1).frames().start());
    browser.keys(Keys.END);
    assertThat(frame()).isEqualTo(film.timing().lengthFrames() - 1);
    browser.press("do-cue-back");
    assertThat(film.timing().cues())
        .anySatisfy(c -> assertThat(c.accentFrame()).isEqualTo(frame()));
  }

  @Test
  void a_click_on_a_bar_goes_there_and_marks_it() {
    browser.find("[data-bar='9']").click();
    assertThat(frame()).isEqualTo(film.timing().bars().get(9).startFrame());
    assertThat(browser.find(".bar[aria-current]").getDomAttribute("data-bar")).isEqualTo("9");
  }

  /**
   * The audio clock is the master: whatever time it gives, that very frame is shown, and the time
   * it gives is the context's own, however long it plays.
   */
  @Test
  void it_plays_by_the_audio_clock_without_drift() {
    browser.press("do-play");
    List<?> readings =
        (List<?>)
            browser.later(
                "const done = arguments[0]; const all = []; const s = reviewPage.sounding;"
                    + "const time = s.seconds.bind(s); let given; let off;"
                    + "s.seconds = () => { given = time(); off = given - s.from"
                    + "  - Math.max(0, s.context.currentTime - (s.context.outputLatency || 0) - s.began);"
                    + "  return given; };"
                    + "const timer = setInterval(() => {"
                    + "  if (given === undefined) return;"
                    + "  all.push([reviewPage.clock.frame, Math.floor(given * 24 + 1e-6), off]);"
                    + "  if (all.length === 40) { clearInterval(timer); done(all); }"
                    + "}, 40);");
    assertThat(frame()).isGreaterThan(12);
    assertThat(readings)
        .allSatisfy(
            each -> {
              List<?> reading = (List<?>) each;
              assertThat(reading.get(0)).isEqualTo(reading.get(1));
              assertThat(((Number) reading.get(2)).doubleValue()).isCloseTo(0, within(0.003));
            });
    browser.press("do-play");
    long stopped = frame();
    assertThat(browser.text("#do-play")).isEqualTo("Play");
    assertThat(browser.number("reviewPage.clock.frame")).isEqualTo(stopped);
  }

  @Test
  void on_ones_a_frame_between_two_photographs_shows_what_lies_between() {
    PlannedReveal reveal = film.reveals().get(0);
    Exposure moved = reveal.exposures().get(5);
    assertThat(moved.frames().length()).isEqualTo(2);
    long second = moved.frames().start() + 1;
    String onTwos = (String) shown(second).get(4);
    browser.press("do-ones");
    String onOnes = (String) shown(second).get(4);
    String next = (String) shown(second + 1).get(4);
    assertThat(onOnes).startsWith(moved.photograph().name());
    assertThat(degrees(onOnes)).isCloseTo((degrees(onTwos) + degrees(next)) / 2, within(0.11));
  }

  private static double degrees(String underTheCamera) {
    String words = underTheCamera.substring(underTheCamera.indexOf(", ") + 2);
    return Double.parseDouble(words.substring(0, words.indexOf('°')));
  }

  @Test
  void it_loops_a_shot_and_plays_at_half_speed() {
    long last = film.timing().shots().get(1).frames().endExclusive() - 4;
    browser.run("reviewPage.seek(arguments[0])", last);
    browser.press("do-loop");
    browser.press("do-half");
    browser.press("do-play");
    Object went =
        browser.later(
            "const done = arguments[1]; const timer = setInterval(() => {"
                + "if (reviewPage.clock.frame < arguments[0]) { clearInterval(timer); done('back'); }"
                + "}, 20);",
            last);
    assertThat(went).isEqualTo("back");
    assertThat(frame()).isBetween(film.timing().shots().get(1).frames().start(), last);
    assertThat(browser.find("#do-half").getDomAttribute("aria-pressed")).isEqualTo("true");
  }

  @Test
  void a_muted_part_and_the_click_are_silent_at_once() {
    browser.press("do-play");
    browser.press("do-sound");
    browser.find(".parts tr:nth-child(4) button").click();
    browser.keys("c");
    Object levels =
        browser.later(
            "const s = reviewPage.sounding; const timer = setInterval(() => {"
                + "const all = [3, 4].map((part) => s.orchestra.seats[part].gain.value)"
                + "  .concat(s.orchestra.clickSeat.gain.value);"
                + "if (all[0] < 0.001 && all[2] > 0.999) { clearInterval(timer); arguments[0](all); }"
                + "}, 20);");
    assertThat(((Number) ((List<?>) levels).get(1)).doubleValue()).isCloseTo(1, within(0.001));
    assertThat(browser.text("#sound-summary")).isEqualTo("9 of 10 parts, click on");
  }

  private double inFilm(long tick) {
    TimingSheet sheet = film.timing();
    return sheet.clock().filmTime(sheet.music().tempo().secondsAt(tick)).toDouble();
  }

  @Test
  void every_click_of_the_film_sounds_on_its_beat() {
    double end = film.timing().clock().rate().startOf(film.timing().lengthFrames()).toDouble();
    List<?> onsets =
        (List<?>)
            browser.later(
                "const done = arguments[1]; reviewPage.rendered(0, arguments[0], -1).then((sound) => {"
                    + "const all = []; let quiet = 100; for (let i = 0; i < sound.length; i++) {"
                    + "if (Math.abs(sound[i]) > 0.001) { if (quiet >= 100) all.push(i); quiet = 0; }"
                    + "else quiet++; } done(all); });",
                end);
    List<Beat> beats = film.timing().music().beats();
    assertThat(onsets).hasSameSizeAs(beats);
    for (int i = 0; i < beats.size(); i++) {
      double expected = inFilm(beats.get(i).tick()) * SAMPLE_RATE;
      assertThat(((Number) onsets.get(i)).doubleValue()).isCloseTo(expected, within(2.0));
    }
  }

  /** The first sample that is heard of a note: its attack begins where the score says. */
  @Test
  void notes_of_every_part_begin_where_the_score_says() {
    Random random = new Random(5);
    for (Part part : film.timing().music().score().parts()) {
      List<Note> notes = film.timing().music().score().notesOf(part);
      double at = inFilm(notes.get(random.nextInt(notes.size())).onTick());
      Object first =
          browser.later(
              "const done = arguments[3]; reviewPage.rendered(...[0, 1, 2].map((i) => arguments[i]))"
                  + ".then((sound) => done(sound.findIndex((s) => Math.abs(s) > 0.0002)));",
              at - 0.01,
              at + 0.15,
              part.index());
      double begins = at - 0.01 + ((Number) first).doubleValue() / SAMPLE_RATE;
      assertThat(begins).as(part.name()).isBetween(at - 0.0001, at + 0.004);
    }
  }
}
