package org.barsheet.handoff;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.barsheet.changes.LaidAsk;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.changes.LaidMusic;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.NotesText;

/**
 * The music that places of a plan meant, in {@code timing.json}: kept until the plan is put right.
 */
final class MeantJson {

  private MeantJson() {}

  static void write(JsonWriter json, LaidMusic meant) throws IOException {
    json.beginObject();
    if (meant.notes().isPresent()) {
      NotesJson.write(json, meant.notes().get());
    }
    json.name("cues").beginArray();
    for (LaidCue cue : meant.cues()) {
      cue(json, cue);
    }
    json.endArray();
    json.name("asked").beginArray();
    for (LaidAsk ask : meant.asks()) {
      AskJson.write(json, ask);
    }
    json.endArray();
    json.name("called").beginArray();
    for (Map.Entry<String, List<String>> panel : new TreeMap<>(meant.called()).entrySet()) {
      json.beginObject();
      json.name("panel").value(panel.getKey());
      names(json, "performers", panel.getValue());
      json.endObject();
    }
    json.endArray();
    json.endObject();
  }

  static void cue(JsonWriter json, LaidCue cue) throws IOException {
    json.beginObject();
    json.name("id").value(cue.id());
    json.name("kind").value(cue.kind());
    json.name("name").value(cue.name());
    json.name("number").value(cue.number());
    json.name("bar").value(cue.bar());
    json.name("beat").value(cue.beat());
    json.name("seconds").beginObject();
    json.name("exact").value(cue.at().toString());
    json.endObject();
    json.name("frame").value(cue.frame());
    json.name("form").value(cue.form());
    names(json, "parts", cue.held().map(HeldReturn::parts).orElse(List.of()));
    json.name("notes").value(cue.held().map(h -> NotesText.ofNotes(h.notes())).orElse(""));
    json.endObject();
  }

  private static void names(JsonWriter json, String key, List<String> names) throws IOException {
    json.name(key).beginArray();
    for (String name : names) {
      json.value(name);
    }
    json.endArray();
  }

  static LaidMusic read(JsonPlace meant) {
    Map<String, List<String>> called = new LinkedHashMap<>();
    meant
        .get("called")
        .each(
            panel ->
                called.put(
                    panel.get("panel").text(), panel.get("performers").each(JsonPlace::text)));
    return new LaidMusic(
        Optional.of(NotesJson.read(meant.get("music"))),
        meant.get("cues").each(TimingJsonReader::cue),
        meant.get("asked").each(AskJson::read),
        called);
  }
}
