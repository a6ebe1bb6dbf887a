package org.barsheet.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.barsheet.clock.Seconds;
import org.barsheet.motif.Form;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Shoot;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.workbook.pen.SheetWords;

/** Every setting in force, under the name the plan gives it. */
final class Settings {

  /**
   * One setting.
   *
   * @param key its name in the plan
   * @param value what is in force
   * @param given whether the plan states it; else it is the default
   */
  record Setting(String key, String value, boolean given) {}

  private final Plan plan;
  private final List<Setting> list = new ArrayList<>();

  private Settings(Plan plan) {
    this.plan = plan;
  }

  /** The settings in the order of the plan's sections. */
  static List<Setting> of(Plan plan) {
    Settings settings = new Settings(plan);
    settings.film(plan.film());
    settings.music(plan.music().tempo());
    settings.recording();
    plan.motifs().forEach(settings::motif);
    settings.artwork(plan.workshop().artwork());
    plan.workshop().camera().ifPresent(settings::camera);
    plan.workshop().shoot().ifPresent(settings::shoot);
    settings.hand(plan.workshop().hand());
    return settings.list;
  }

  private void add(String key, String value) {
    list.add(new Setting(key, value, plan.text().given().contains(key)));
  }

  private void film(Film film) {
    add("film.frame-rate", SheetWords.rate(film.rate()));
    add("film.first-frame", film.firstFrame().toString());
    add("film.music-starts", seconds(film.musicStarts()));
    add("film.music-from", words(film.musicFrom().name()));
    add("film.shown", SheetWords.shown(film.framesPerPhotograph()));
    add("film.lead", film.lead() + " f");
    add("film.closed-hold", film.closedHold() + " f");
    add("film.tail", seconds(film.tail()));
    add("film.pop", film.pop().map(Settings::seconds).orElse("none"));
    add("film.frame-size", film.width() + "x" + film.height());
    add("film.paper", film.paper() == Film.Paper.A4 ? "A4" : "Letter");
  }

  private static String seconds(Seconds time) {
    return time.toDecimal(3).stripTrailingZeros().toPlainString() + " s";
  }

  private void music(TempoRequest music) {
    add("music.tempo", words(music.tempo().name()));
    add("music.first-bar", Integer.toString(music.firstBar()));
    add("music.pickup", words(music.pickup().name()));
    add("music.played-order", music.playedOrder().orElse("as in the file"));
    add(
        "music.pins",
        music.pins().isEmpty() ? "none" : SheetWords.count(music.pins().size(), "pin"));
  }

  private void recording() {
    add(
        "music.recording",
        plan.music()
            .recording()
            .map(each -> String.valueOf(each.file().getFileName()))
            .orElse("none"));
    plan.music()
        .recording()
        .ifPresent(
            each ->
                add(
                    "music.recording-starts",
                    each.starts()
                        .map(time -> seconds(time) + " from the first frame")
                        .orElse("at the score's first tick")));
  }

  private void hand(Hand hand) {
    add("hand.angle", SheetWords.plain(hand.degrees()) + " deg");
    add("hand.step", SheetWords.plain(hand.millimeters()) + " mm");
    add("hand.light", SheetWords.plain(hand.percent()) + " %");
    add(
        "hand.largest-step",
        hand.largestStep()
            .map(mm -> SheetWords.plain(mm) + " mm")
            .orElse("an eighth of the movement"));
  }

  private void motif(MotifRequest motif) {
    String key = "motifs." + motif.name() + ".";
    add(key + "accent", motif.accent().toString());
    add(key + "match", words(motif.match().name()));
    String forms =
        motif.forms().stream().sorted().map(Form::word).collect(Collectors.joining(", "));
    add(key + "forms", forms.isEmpty() ? "as given only" : forms);
  }

  private void artwork(Artwork artwork) {
    add("artwork.square", SheetWords.plain(artwork.squareMillimeters()) + " mm");
    add(
        "artwork.squares",
        SheetWords.plain(artwork.squaresWide())
            + "x"
            + SheetWords.plain(SheetWords.hundredths(artwork.squaresHigh())));
    add(
        "artwork.smallest-workable",
        artwork.smallestWorkableMillimeters() > 0
            ? SheetWords.plain(artwork.smallestWorkableMillimeters()) + " mm"
            : "none");
  }

  private void camera(Camera camera) {
    add("camera.lens", SheetWords.plain(camera.lensMillimeters()) + " mm");
    add("camera.sensor", SheetWords.plain(camera.sensorMillimeters()) + " mm");
    add("camera.pixels", camera.pixelsWidth() + "x" + camera.pixelsHeight());
  }

  private void shoot(Shoot shoot) {
    add("shoot.photographs-per-hour", SheetWords.plain(shoot.photographsPerHour()));
    add("shoot.minutes-per-setup", SheetWords.plain(shoot.minutesPerSetup()));
    add("shoot.starts", shoot.starts().map(Object::toString).orElse("no day given"));
    add("shoot.hours-per-day", shoot.hoursPerDay().map(SheetWords::plain).orElse("not given"));
  }

  private static String words(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
