package org.barsheet.review;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.InputFile;
import org.barsheet.findings.Flashes;
import org.barsheet.frames.FilmFrames;
import org.barsheet.plan.Film;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Recording;
import org.barsheet.timing.Finding;

/**
 * Everything the page shows, read from the film sheet. Times of sound are whole hundred-thousandths
 * of a second from film frame 0; frames are film frames.
 */
final class PageData {

  private final FilmSheet sheet;
  private final Plan plan;
  private final Path folder;
  private final List<InputFile> inputs;
  private final PageJson json = new PageJson();

  private PageData(FilmSheet sheet, List<InputFile> inputs, Path folder) {
    this.sheet = sheet;
    this.inputs = inputs;
    this.folder = folder;
    this.plan = sheet.plan();
  }

  static String json(FilmSheet sheet, List<InputFile> inputs, String name, Path folder) {
    PageData data = new PageData(sheet, inputs, folder);
    data.json.object(() -> data.all(name));
    return data.json.toString();
  }

  private void all(String name) {
    json.text("name", name);
    json.text("ticked", sheet.ticks().isBegun() ? sheet.ticks().ticked() : "");
    film();
    json.objects("inputs", inputs, this::input);
    json.maybe(
        plan.music().recording(),
        recording -> json.name("recording").object(() -> recording(recording)));
    new MusicData(sheet, json).write();
    PageDrawings drawings = PageDrawings.of(sheet.timing().shots());
    FilmFrames frames = FilmFrames.of(sheet, file -> drawings.indexOf(file).isPresent());
    new ArtworkData(frames, json).write();
    new ShotData(frames, drawings, json).write();
    json.objects("findings", sheet.findings(), this::finding);
    json.objects(
        "flashes",
        Flashes.of(sheet.timing(), sheet.reveals()),
        span -> json.number("start", span.start()).number("end", span.endExclusive()));
    json.maybe(sheet.changes(), changes -> new EarlierCuts(sheet, changes).write(json));
    json.texts("drawings", drawings.addresses());
  }

  private void film() {
    Film film = plan.film();
    FrameRate rate = film.rate();
    json.text("title", plan.title());
    json.name("rate")
        .object(
            () ->
                json.text("words", PageWords.rate(rate))
                    .number("numerator", rate.numerator())
                    .number("denominator", rate.denominator())
                    .number("nominal", rate.nominal())
                    .yes("dropFrame", rate.dropFrame()));
    json.number("firstLabel", film.firstFrame().frame());
    json.number("length", sheet.timing().lengthFrames());
    json.text("duration", PageWords.duration(rate, sheet.timing().lengthFrames()));
    json.maybe(PagePhotographs.counted(sheet), words -> json.text("taken", words));
    json.number("musicStart", sheet.timing().clock().musicStartFrame());
    json.number("width", film.width()).number("height", film.height());
  }

  private void recording(Recording recording) {
    json.text("file", String.valueOf(recording.file().getFileName()));
    json.text("address", RecordingAddress.of(recording.file(), folder));
    json.number("starts", MusicData.units(sheet.timing().clock().startOf(recording)));
  }

  private void input(InputFile input) {
    json.text("role", input.role()).text("file", input.name()).text("version", input.version());
  }

  private void finding(Finding finding) {
    json.text("severity", PageWords.word(finding.severity()));
    json.text("concerns", PageWords.word(finding.concerns()));
    json.text("panel", finding.panel()).text("place", finding.place());
    finding.frame().ifPresent(frame -> json.number("frame", frame));
    json.text("sentence", finding.sentence()).text("remedy", finding.remedy());
  }
}
