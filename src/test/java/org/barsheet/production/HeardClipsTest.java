package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.StreamSupport;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.HomeRecordings.Sent;
import org.barsheet.received.HeardPlace;
import org.barsheet.received.ReceivedClip;
import org.barsheet.timing.Finding;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Performers' clips find their place by their sound. */
class HeardClipsTest {

  @TempDir private Path folder;

  /** How far a start is off, in seconds, and whether it was said to be sure. */
  private record Outcome(String what, double off, double driftOff, HeardPlace place) {}

  /** Half of them noted a clap, and half of these noted it 6 frames off. */
  private static OptionalInt slip(long seed, int player) {
    int kind = (int) ((seed + player) % 4);
    return kind < 2 ? OptionalInt.of(6 * kind) : OptionalInt.empty();
  }

  /** Two seconds before the music, on a frame of 25 a second. */
  private static String clap(Sent sent, OptionalInt slip) {
    if (slip.isEmpty() || sent.start() > -2) {
      return "";
    }
    double inClip = (-2 - sent.start()) / (1 + sent.drift() / 1e6);
    long frame = Math.round(25 * inClip) + slip.getAsInt();
    return ", clip-rate: 25, clap: {at: -2 s, clip-frame: " + frame + "}";
  }

  private List<Outcome> outcomes(long seed, int bars, List<Integer> players) throws IOException {
    HomeRecordings home = new HomeRecordings(seed, bars);
    Path here = folder.resolve("production " + seed);
    Files.createDirectories(here);
    home.writeScore(here.resolve("quay.mid"));
    List<Sent> sent = new ArrayList<>();
    StringBuilder performers = new StringBuilder();
    for (int player : players) {
      String name = HomeRecordings.NAMES.get(player);
      sent.add(home.record(player, here.resolve("clips/" + name + ".wav")));
      performers.append("  " + name + ": {part: " + name + ", clip: " + name + ".wav");
      performers.append(clap(sent.get(sent.size() - 1), slip(seed, player)) + "}\n");
    }
    Path plan = here.resolve("quay.yaml");
    Files.writeString(
        plan,
        "title: Quay\nscore: quay.mid\nclips: clips\nfilm: {frame-rate: 24, music-starts: 2 s}\n"
            + "performers:\n"
            + performers
            + "panels: [{panel: 1}]\n");
    FilmSheet film = Production.film(plan, Progress.SILENT);
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < sent.size(); i++) {
      outcomes.add(outcome(seed, sent.get(i), film.clips().get(i)));
      OptionalInt slip = slip(seed, players.get(i));
      boolean slipped =
          slip.orElse(0) > 0 && sent.get(i).start() <= -2 && outcomes.get(i).place().isFound();
      String told = sent.get(i).performer() + ".wav sounds as if it begins";
      assertThat(film.findings().stream().anyMatch(f -> f.sentence().startsWith(told)))
          .as("%s %s", told, slip)
          .isEqualTo(slipped);
    }
    return outcomes;
  }

  private static Outcome outcome(long seed, Sent sent, ReceivedClip clip) {
    HeardPlace place = clip.heard().orElseThrow();
    return new Outcome(
        seed + " " + sent.performer() + (sent.leaks() ? ", clicks" : ""),
        place.start().toDouble() - sent.start(),
        place.drift() - sent.drift(),
        place);
  }

  private static void isRightOrUnsure(Outcome one) {
    HeardPlace place = one.place();
    double off = 1000 * Math.abs(one.off());
    assertThat(place.isSure() ? off : 0).as(one.toString()).isLessThanOrEqualTo(5);
    assertThat(place.isFound() ? off : 0).as(one.toString()).isLessThanOrEqualTo(place.within());
  }

  /** Film frame 48 is the music's start. */
  @Test
  void a_clip_is_listened_to_once_and_laid_where_it_was_heard() throws IOException {
    Outcome flute = outcomes(1, 18, List.of(1)).get(0);
    isRightOrUnsure(flute);
    assertThat(flute.place().isFound()).isTrue();
    Path here = folder.resolve("production 1");
    Path plan = here.resolve("quay.yaml");
    Path take = here.resolve("clips/Flute take 2.wav");
    Files.copy(here.resolve("clips/flute.wav"), take);
    Path out = here.resolve("out");
    FilmSheet film = Production.make(plan, out, Extras.NONE, Progress.SILENT).film();
    assertThat(film.findings())
        .extracting(Finding::sentence)
        .contains("nobody was asked for Flute take 2.wav: it may be another take of flute");
    List<String> steps = new ArrayList<>();
    assertThat(Production.film(plan, out, steps::add).clips().get(0).heard())
        .contains(flute.place());
    assertThat(steps).noneMatch(step -> step.startsWith("listening"));
    assertOnItsTrack(out.resolve("quay.otio"), flute.place().start().toDouble());
  }

  /** What sounds on the first film frame it is heard on is that moment of the clip. */
  private static void assertOnItsTrack(Path timeline, double start) throws IOException {
    JsonObject all = JsonParser.parseString(Files.readString(timeline)).getAsJsonObject();
    JsonArray tracks = all.getAsJsonObject("tracks").getAsJsonArray("children");
    JsonObject track =
        StreamSupport.stream(tracks.spliterator(), false)
            .map(JsonElement::getAsJsonObject)
            .filter(one -> one.get("name").getAsString().equals("flute"))
            .filter(one -> one.get("kind").getAsString().equals("Audio"))
            .findFirst()
            .orElseThrow();
    long frames = 0;
    for (JsonElement child : track.getAsJsonArray("children")) {
      JsonObject range = child.getAsJsonObject().getAsJsonObject("source_range");
      if (child.getAsJsonObject().get("OTIO_SCHEMA").getAsString().equals("Clip.2")) {
        JsonObject from = range.getAsJsonObject("start_time");
        double inClip = from.get("value").getAsDouble() / from.get("rate").getAsDouble();
        assertThat(inClip).isCloseTo(frames / 24.0 - 2 - start, within(1 / 48_000.0));
      }
      frames += range.getAsJsonObject("duration").get("value").getAsLong();
    }
    assertThat(frames).isGreaterThan(24 * 30);
  }

  /** Twelve productions of six performers ({@code clips.first}, {@code clips.count}). */
  @Test
  @Tag("trial")
  void every_start_is_right_or_unsure() throws IOException {
    List<Outcome> all = new ArrayList<>();
    int first = Integer.getInteger("clips.first", 1);
    for (long seed = first; seed < first + Integer.getInteger("clips.count", 12); seed++) {
      all.addAll(outcomes(seed, 28, List.of(0, 1, 2, 3, 4, 5)));
    }
    for (Outcome one : all) {
      System.out.printf(
          Locale.ROOT,
          "%-20s off %8.2f ms, told within %6.1f, drift off %6.1f, confidence %.2f %s%n",
          one.what(),
          1000 * one.off(),
          one.place().within(),
          one.driftOff(),
          one.place().confidence(),
          one.place().isSure() ? "" : one.place().isFound() ? "unsure" : "not found");
    }
    all.forEach(HeardClipsTest::isRightOrUnsure);
  }
}
