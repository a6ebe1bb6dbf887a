package org.barsheet.handoff;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidFilm.LaidAppearance;
import org.barsheet.changes.LaidFilm.LaidBar;
import org.barsheet.changes.LaidFilm.LaidExposure;
import org.barsheet.changes.LaidFilm.LaidInput;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.changes.LaidIssue;

/**
 * An issue in {@code timing.json}: of the run that was sent out, what later runs are compared with,
 * under the keys it has in its own {@code timing.json}.
 */
final class LaidJson {

  private final JsonWriter json;

  private LaidJson(JsonWriter json) {
    this.json = json;
  }

  private interface Item<T> {
    void write(T item) throws IOException;
  }

  static void write(JsonWriter json, LaidIssue issue) throws IOException {
    new LaidJson(json).issue(issue);
  }

  private void issue(LaidIssue issue) throws IOException {
    LaidFilm film = issue.film();
    json.beginObject();
    json.name("name").value(issue.name());
    film(film);
    array("inputs", film.inputs(), this::input);
    array("bars", film.bars(), this::bar);
    if (film.music().isPresent()) {
      NotesJson.write(json, film.music().get());
    }
    array("cues", film.cues(), cue -> MeantJson.cue(json, cue));
    array("shots", film.shots(), this::shot);
    array("appearances", film.appearances(), this::appearance);
    array("asked", film.asks(), ask -> AskJson.write(json, ask));
    json.endObject();
  }

  private <T> void array(String name, List<T> items, Item<T> item) throws IOException {
    json.name(name).beginArray();
    for (T each : items) {
      item.write(each);
    }
    json.endArray();
  }

  private void film(LaidFilm film) throws IOException {
    json.name("film").beginObject();
    json.name("title").value(film.title());
    json.name("frameRate").value(film.rate().exactName());
    json.name("dropFrame").value(film.rate().dropFrame());
    json.name("firstFrame").value(film.firstFrame().toString());
    json.name("lengthFrames").value(film.lengthFrames());
    json.name("soundHeadSeconds").value(film.headSeconds());
    json.endObject();
  }

  private void input(LaidInput input) throws IOException {
    json.beginObject();
    json.name("file").value(input.file());
    json.name("sha256").value(input.sha256());
    json.endObject();
  }

  private void bar(LaidBar bar) throws IOException {
    json.beginObject();
    json.name("number").value(bar.number());
    json.name("startFrame").value(bar.startFrame());
    json.endObject();
  }

  private void shot(LaidShot shot) throws IOException {
    json.beginObject();
    json.name("panel").value(shot.panel());
    json.name("cue").value(shot.cue());
    json.name("startFrame").value(shot.frames().start());
    json.name("endFrameExclusive").value(shot.frames().endExclusive());
    array("reveals", shot.reveals(), this::reveal);
    json.endObject();
  }

  private void reveal(LaidReveal reveal) throws IOException {
    json.beginObject();
    json.name("opening").value(reveal.opening());
    json.name("model").value(reveal.model());
    json.name("layer").value(reveal.layer());
    json.name("accentFrame").value(reveal.accentFrame());
    json.name("landsFrame").value(reveal.landsFrame());
    json.name("firstGapFrame").value(reveal.firstGapFrame());
    array("exposures", reveal.exposures(), this::exposure);
    json.endObject();
  }

  private void exposure(LaidExposure exposure) throws IOException {
    json.beginObject();
    json.name("startFrame").value(exposure.frames().start());
    json.name("frames").value(exposure.frames().length());
    json.name("photograph").value(exposure.photograph());
    json.name("progress").value(exposure.progress());
    json.endObject();
  }

  private void appearance(LaidAppearance seen) throws IOException {
    json.beginObject();
    json.name("performer").value(seen.performer());
    json.name("opening").value(seen.opening());
    json.name("panel").value(seen.panel());
    json.name("startFrame").value(seen.frames().start());
    json.name("endFrameExclusive").value(seen.frames().endExclusive());
    json.name("part").value(seen.part());
    json.endObject();
  }
}
