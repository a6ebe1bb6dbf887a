package org.barsheet.handoff;

import com.google.gson.FormattingStyle;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidIssue;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.OpeningState;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Recording;
import org.barsheet.plan.Rect;
import org.barsheet.pulse.Music;
import org.barsheet.revision.NotesText;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.shooting.ArtworkPlate;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.ShootingPlan;
import org.barsheet.shooting.WorkTime;
import org.barsheet.timing.FilmPin;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Shot;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TempoSection;

/**
 * Writes {@code timing.json}: the film sheet for programs, and for the next run. Its fields are
 * laid down in {@code timing.schema.json}; keys always stand in the same order.
 */
public final class TimingJson {

  /** The name in its {@code format} field. */
  public static final String FORMAT = "barsheet-timing";

  /** The version of its fields. */
  public static final int VERSION = 1;

  private static final int SECONDS_DECIMALS = 6;

  private final FilmSheet sheet;
  private final JsonWriter json;

  private TimingJson(FilmSheet sheet, Writer text) {
    this.sheet = sheet;
    this.json = new JsonWriter(text);
    json.setFormattingStyle(FormattingStyle.PRETTY.withNewline("\n"));
    json.setSerializeNulls(true);
  }

  /**
   * Writes a film sheet as UTF-8.
   *
   * @throws IOException if the stream does not take it
   */
  public static void write(FilmSheet sheet, OutputStream out) throws IOException {
    Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    new TimingJson(sheet, text).document();
    text.write("\n");
    text.flush();
  }

  private void document() throws IOException {
    json.beginObject();
    json.name("format").value(FORMAT);
    json.name("version").value(VERSION);
    film();
    array("inputs", sheet.inputs(), this::input);
    tempo();
    array("bars", sheet.timing().bars(), this::bar);
    NotesJson.write(json, ScoreNotes.of(sheet.timing().music()));
    array("cues", sheet.timing().cues(), this::cue);
    array("shots", sheet.timing().shots(), this::shot);
    array("openings", sheet.plan().workshop().openings(), this::opening);
    array("movements", sheet.movements(), movement -> MovementJson.write(json, movement));
    array("appearances", sheet.appearances(), this::appearance);
    shooting(sheet.shooting());
    TakenJson.write(json, sheet.ticks());
    array("findings", sheet.findings(), this::finding);
    LaidFilm laid = sheet.laidDown();
    array("asked", laid.asks(), ask -> AskJson.write(json, ask));
    array("meant", laid.meant(), music -> MeantJson.write(json, music));
    json.name("issue").value(laid.issues().name());
    json.name("issues").beginArray();
    json.setFormattingStyle(FormattingStyle.COMPACT);
    for (LaidIssue issue : laid.issues().earlier()) {
      LaidJson.write(json, issue);
    }
    json.setFormattingStyle(FormattingStyle.PRETTY.withNewline("\n"));
    json.endArray();
    json.endObject();
    json.flush();
  }

  private interface Item<T> {
    void write(T item) throws IOException;
  }

  private <T> void array(String name, List<T> items, Item<T> item) throws IOException {
    json.name(name).beginArray();
    for (T each : items) {
      item.write(each);
    }
    json.endArray();
  }

  private void film() throws IOException {
    Film film = sheet.plan().film();
    json.name("film").beginObject();
    json.name("title").value(sheet.plan().title());
    json.name("frameRate").value(film.rate().exactName());
    json.name("dropFrame").value(film.rate().dropFrame());
    json.name("firstFrame").value(film.firstFrame().toString());
    json.name("musicStartFrame").value(sheet.timing().clock().musicStartFrame());
    json.name("lengthFrames").value(sheet.timing().lengthFrames());
    json.name("soundHeadSeconds").value(SoundLayout.of(sheet.timing()).headSeconds());
    json.name("lead").value(film.lead());
    if (sheet.plan().music().recording().isPresent()) {
      recording(sheet.plan().music().recording().get());
    }
    json.endObject();
  }

  private void recording(Recording recording) throws IOException {
    json.name("recording").beginObject();
    json.name("file").value(String.valueOf(recording.file().getFileName()));
    seconds("startSeconds", sheet.timing().clock().startOf(recording));
    json.endObject();
  }

  private void input(InputFile input) throws IOException {
    json.beginObject();
    json.name("file").value(input.name());
    json.name("sha256").value(input.sha256());
    json.endObject();
  }

  private void tempo() throws IOException {
    Music music = sheet.timing().music();
    json.name("tempo").beginObject();
    json.name("source").value(CueWords.word(music.source()));
    json.name("evidence").beginObject();
    json.name("score").value(FilmWords.decimal(music.evidence().score()));
    json.name("verdict").value(CueWords.word(music.evidence().verdict()));
    json.name("sentence").value(music.evidence().sentence());
    json.endObject();
    json.name("sentence").value(music.sentence());
    array("sections", sheet.timing().tempo().sections(), this::section);
    array("pins", sheet.timing().tempo().pins(), this::pin);
    json.endObject();
  }

  private void section(TempoSection section) throws IOException {
    json.beginObject();
    json.name("name").value(section.name());
    json.name("firstBar").value(section.first().bar().number());
    json.name("lastBar").value(section.last().bar().number());
    json.name("startFrame").value(section.first().startFrame());
    json.name("beats").value(section.beats());
    json.name("framesPerBeat").value(section.framesPerBeat().toString());
    json.name("beatsPerMinute").value(FilmWords.plain(section.beatsPerMinute()));
    seconds("mostDrift", section.mostDrift());
    json.name("barsOnPhotographs").value(section.barsOnPhotographs());
    json.name("bars").value(section.bars());
    json.endObject();
  }

  private void pin(FilmPin pin) throws IOException {
    json.beginObject();
    json.name("bar").value(pin.bar().bar().number());
    seconds("asked", pin.asked());
    json.name("frame").value(pin.frame());
    seconds("barLater", pin.residual());
    seconds("frameLater", pin.frameResidual());
    json.endObject();
  }

  private void bar(FilmBar bar) throws IOException {
    json.beginObject();
    json.name("number").value(bar.bar().number());
    json.name("meter").value(bar.bar().meter().toString());
    seconds("startSeconds", bar.start());
    json.name("startFrame").value(bar.startFrame());
    json.endObject();
  }

  private void seconds(String name, Seconds seconds) throws IOException {
    json.name(name).beginObject();
    json.name("exact").value(seconds.toString());
    json.name("decimal").value(FilmWords.plain(seconds.toDecimal(SECONDS_DECIMALS)));
    json.endObject();
  }

  private void cue(Cue cue) throws IOException {
    json.beginObject();
    json.name("id").value(cue.id());
    json.name("kind").value(CueWords.kind(cue));
    json.name("name").value(cue.name());
    json.name("number").value(cue.number());
    json.name("bar").value(cue.place().bar());
    json.name("beat").value(new BigDecimal(cue.place().beatText()));
    seconds("seconds", cue.at());
    json.name("frame").value(cue.frame());
    json.name("accentBar").value(cue.accentPlace().bar());
    json.name("accentBeat").value(new BigDecimal(cue.accentPlace().beatText()));
    seconds("accentSeconds", cue.accentAt());
    json.name("accentFrame").value(cue.accentFrame());
    json.name("certainty").value(CueWords.certainty(cue));
    json.name("form").value(cue.formWords());
    array("parts", CueWords.parts(sheet, cue), json::value);
    json.name("notes").value(notes(cue));
    json.endObject();
  }

  private String notes(Cue cue) {
    return cue.occurrence()
        .map(occurrence -> ScoreNotes.held(occurrence, sheet.timing().music()).notes())
        .map(NotesText::ofNotes)
        .orElse("");
  }

  private void shot(Shot shot) throws IOException {
    Film film = sheet.plan().film();
    json.beginObject();
    json.name("panel").value(shot.panel().name());
    json.name("action").value(shot.panel().action());
    json.name("cue").value(shot.cue().id());
    json.name("reason").value(shot.reason());
    json.name("startFrame").value(shot.frames().start());
    json.name("endFrameExclusive").value(shot.frames().endExclusive());
    json.name("timecodeIn").value(film.timecode(shot.frames().start()).toString());
    json.name("timecodeOut").value(film.timecode(shot.frames().endExclusive()).toString());
    rect("fieldFrom", shot.panel().field().map(field -> field.from()));
    rect("fieldTo", shot.panel().field().map(field -> field.to()));
    array("reveals", sheet.revealsOf(shot), this::reveal);
    json.endObject();
  }

  private void rect(String name, Optional<Rect> rect) throws IOException {
    json.name(name);
    if (rect.isEmpty()) {
      json.nullValue();
      return;
    }
    json.beginObject();
    json.name("left").value(FilmWords.decimal(rect.get().left()));
    json.name("top").value(FilmWords.decimal(rect.get().top()));
    json.name("width").value(FilmWords.decimal(rect.get().width()));
    json.name("height").value(FilmWords.decimal(rect.get().height()));
    json.endObject();
  }

  private void reveal(PlannedReveal reveal) throws IOException {
    json.beginObject();
    json.name("opening").value(reveal.opening().name());
    json.name("model").value(reveal.opening().model());
    json.name("layer").value(reveal.layer());
    json.name("accentFrame").value(reveal.accentFrame());
    json.name("landsFrame").value(reveal.landsFrame());
    json.name("firstGapFrame").value(reveal.firstGapFrame());
    json.name("halfOpenFrame").value(reveal.halfOpenFrame());
    array("exposures", reveal.exposures(), this::exposure);
    json.endObject();
  }

  private void exposure(Exposure exposure) throws IOException {
    json.beginObject();
    json.name("startFrame").value(exposure.frames().start());
    json.name("frames").value(exposure.frames().length());
    json.name("photograph").value(exposure.photograph().name());
    json.name("progress").value(FilmWords.decimal(exposure.progress()));
    json.endObject();
  }

  private void opening(Opening opening) throws IOException {
    json.beginObject();
    json.name("opening").value(opening.name());
    json.name("model").value(opening.model());
    rect("rect", Optional.of(opening.rect()));
    array(
        "states",
        sheet.states().stream().filter(state -> state.opening().equals(opening.name())).toList(),
        this::state);
    json.endObject();
  }

  private void state(OpeningState state) throws IOException {
    json.beginObject();
    json.name("panel").value(panelOf(state.shot()));
    json.name("atFirstFrame").value(FilmWords.decimal(state.atFirstFrame()));
    json.name("atLastFrame").value(FilmWords.decimal(state.atLastFrame()));
    json.endObject();
  }

  private void appearance(Appearance appearance) throws IOException {
    json.beginObject();
    json.name("performer").value(appearance.performer().name());
    json.name("opening").value(appearance.opening().name());
    json.name("panel").value(panelOf(appearance.shot()));
    json.name("startFrame").value(appearance.frames().start());
    json.name("endFrameExclusive").value(appearance.frames().endExclusive());
    json.name("part").value(appearance.performer().part());
    json.name("sounding").value(FilmWords.decimal(appearance.sounding()));
    json.endObject();
  }

  private void shooting(ShootingPlan shooting) throws IOException {
    json.name("shooting").beginObject();
    json.name("photographs").value(shooting.photographs());
    json.name("plates").value(shooting.plates());
    hours(shooting.time());
    array("setups", shooting.setups(), this::setup);
    json.name("atRest").beginArray();
    for (Setup setup : shooting.setups()) {
      for (ArtworkPlate plate : setup.atRest()) {
        artworkPlate(plate, setup);
      }
    }
    json.endArray();
    json.endObject();
  }

  private void artworkPlate(ArtworkPlate plate, Setup setup) throws IOException {
    json.beginObject();
    json.name("name").value(plate.name());
    array("panels", plate.panels(), json::value);
    array("open", plate.open(), standing -> json.value(standing.opening()));
    json.name("setup").value(setup.number());
    json.endObject();
  }

  private void hours(Optional<WorkTime> time) throws IOException {
    json.name("hours");
    if (time.isPresent()) {
      json.value(FilmWords.decimal(time.get().hours()));
    } else {
      json.nullValue();
    }
  }

  private void setup(Setup setup) throws IOException {
    json.beginObject();
    json.name("number").value(setup.number());
    json.name("name").value(setup.name());
    json.name("model").value(setup.model().name());
    json.name("closedAgain").value(setup.closedAgain());
    rect("field", setup.view().map(CameraView::field));
    json.name("photographs").value(setup.photographs());
    hours(setup.time());
    array("movements", setup.runs(), run -> json.value(run.movement().name()));
    array(
        "plates",
        setup.runs().stream().flatMap(run -> run.plates().stream()).toList(),
        plate -> json.value(plate.name()));
    json.endObject();
  }

  private String panelOf(int shot) {
    return sheet.timing().shots().get(shot).panel().name();
  }

  private void finding(Finding finding) throws IOException {
    json.beginObject();
    json.name("severity").value(CueWords.word(finding.severity()));
    json.name("concerns").value(CueWords.word(finding.concerns()));
    json.name("panel").value(finding.panel());
    json.name("place").value(finding.place());
    json.name("frame");
    if (finding.frame().isPresent()) {
      json.value(finding.frame().getAsLong());
    } else {
      json.nullValue();
    }
    json.name("sentence").value(finding.sentence());
    json.name("remedy").value(finding.remedy());
    json.endObject();
  }
}
