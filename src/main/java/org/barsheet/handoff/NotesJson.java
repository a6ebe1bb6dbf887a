package org.barsheet.handoff;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.revision.BarNote;
import org.barsheet.revision.HeldBar;
import org.barsheet.revision.HeldPart;
import org.barsheet.revision.NotesText;
import org.barsheet.revision.ScoreNotes;

/**
 * The notes of the score in {@code timing.json}, a line a part: the next run finds bars by them.
 */
final class NotesJson {

  private NotesJson() {}

  static void write(JsonWriter json, ScoreNotes score) throws IOException {
    json.name("music").beginObject();
    json.name("bars").value(numbers(score));
    json.name("beats").value(NotesText.ofBeats(score.bars()));
    json.name("end").value(score.bars().get(score.bars().size() - 1).end());
    json.name("parts").beginArray();
    for (HeldPart part : score.parts()) {
      json.beginObject();
      json.name("name").value(part.name());
      json.name("drums").value(part.drums());
      json.name("notes").value(NotesText.ofBars(part.bars()));
      json.endObject();
    }
    json.endArray();
    json.endObject();
  }

  /** {@code 1 2 3 2.2}: bar 2 is played again. */
  private static String numbers(ScoreNotes score) {
    List<String> numbers = new ArrayList<>();
    for (HeldBar bar : score.bars()) {
      numbers.add(bar.number() + (bar.time() == 1 ? "" : "." + bar.time()));
    }
    return String.join(" ", numbers);
  }

  static ScoreNotes read(JsonPlace music) {
    List<HeldPart> parts =
        music
            .get("parts")
            .each(
                part ->
                    new HeldPart(
                        part.get("name").text(),
                        part.get("drums").yesOrNo(),
                        notes(part.get("notes"))));
    try {
      return new ScoreNotes(bars(music), parts);
    } catch (IllegalArgumentException unlike) {
      throw music.damage("its bars, beats and notes don't match");
    }
  }

  private static List<List<BarNote>> notes(JsonPlace text) {
    try {
      return NotesText.bars(text.text());
    } catch (IllegalArgumentException unreadable) {
      throw text.damage("these are not notes");
    }
  }

  private static List<HeldBar> bars(JsonPlace music) {
    List<List<Long>> beats = NotesText.beats(music.get("beats").text());
    String[] numbers = music.get("bars").text().split(" ", -1);
    if (numbers.length != beats.size()) {
      throw new IllegalArgumentException("bars without beats, or beats without bars");
    }
    List<HeldBar> bars = new ArrayList<>();
    for (int i = 0; i < numbers.length; i++) {
      String[] number = numbers[i].split("\\.", -1);
      bars.add(
          new HeldBar(
              Integer.parseInt(number[0]),
              number.length == 1 ? 1 : Integer.parseInt(number[1]),
              beats.get(i),
              i + 1 < beats.size() ? beats.get(i + 1).get(0) : music.get("end").whole()));
    }
    return bars;
  }
}
