package org.barsheet.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.Locale;
import org.barsheet.production.ScoreSummary;
import org.barsheet.production.ScoreSummary.MarkAt;
import org.barsheet.production.ScoreSummary.MeterFrom;
import org.barsheet.production.ScoreSummary.PartSize;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.score.Division;
import org.barsheet.score.ReadingNote;
import org.barsheet.score.Score;
import org.barsheet.suggestions.Suggestion;

/** A score's figures as JSON, for a program. */
final class AboutJson {

  private AboutJson() {}

  static JsonObject of(ScoreSummary about, int figures) {
    Score score = about.music().score();
    JsonObject json = new JsonObject();
    json.addProperty("format", score.format());
    json.add("division", division(score.division()));
    json.addProperty("notes", score.notes().size());
    json.addProperty("firstOnsetSeconds", about.firstOnset().toDecimal(6));
    json.addProperty("lastOnsetSeconds", about.lastOnset().toDecimal(6));
    json.addProperty("lengthSeconds", about.length().toDecimal(6));
    json.add("parts", parts(about));
    json.addProperty("tempoEvents", score.tempoEvents());
    json.add("meters", meters(about));
    json.addProperty("bars", about.music().bars().bars().size());
    json.add("marks", marks(about));
    json.add("evidence", evidence(about));
    json.add("suggestions", suggestions(about, figures));
    json.add("readingNotes", readingNotes(score));
    return json;
  }

  private static JsonObject division(Division division) {
    JsonObject json = new JsonObject();
    if (division instanceof Division.PerFrame perFrame) {
      json.addProperty("ticksPerFrame", perFrame.ticks());
      json.addProperty("framesPerSecond", perFrame.rate().toString());
    } else {
      json.addProperty("ticksPerQuarter", ((Division.PerQuarter) division).ticks());
    }
    return json;
  }

  private static JsonArray parts(ScoreSummary about) {
    JsonArray parts = new JsonArray();
    for (PartSize size : about.parts()) {
      JsonObject part = new JsonObject();
      part.addProperty("name", size.part().name());
      part.addProperty("instrument", size.part().instrument());
      part.addProperty("notes", size.notes());
      part.addProperty("channel", size.part().channel());
      part.addProperty("drums", size.part().drums());
      parts.add(part);
    }
    return parts;
  }

  private static JsonArray meters(ScoreSummary about) {
    JsonArray meters = new JsonArray();
    for (MeterFrom from : about.meters()) {
      JsonObject meter = new JsonObject();
      meter.addProperty("meter", from.meter().toString());
      meter.addProperty("fromBar", from.bar());
      meters.add(meter);
    }
    return meters;
  }

  private static JsonArray marks(ScoreSummary about) {
    JsonArray marks = new JsonArray();
    for (MarkAt at : about.marks()) {
      JsonObject mark = new JsonObject();
      mark.addProperty("kind", at.mark().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
      mark.addProperty("text", at.mark().text());
      mark.addProperty("bar", at.place().bar());
      mark.addProperty("beat", Figures.decimal(at.place().beat(), 3));
      mark.addProperty("seconds", at.at().toDecimal(6));
      marks.add(mark);
    }
    return marks;
  }

  private static JsonObject evidence(ScoreSummary about) {
    JsonObject json = new JsonObject();
    json.addProperty("score", about.music().evidence().score());
    json.addProperty("verdict", about.music().evidence().verdict().name().toLowerCase(Locale.ROOT));
    json.addProperty("sentence", about.music().evidence().sentence());
    JsonArray parts = new JsonArray();
    for (TempoEvidence.PartScore own : about.music().evidence().parts()) {
      JsonObject part = new JsonObject();
      part.addProperty("part", own.part().name());
      part.addProperty("score", own.score());
      parts.add(part);
    }
    json.add("parts", parts);
    JsonArray doubts = new JsonArray();
    about.music().doubts().forEach(doubt -> doubts.add(doubt.sentence()));
    json.add("doubts", doubts);
    return json;
  }

  private static JsonArray readingNotes(Score score) {
    JsonArray notes = new JsonArray();
    for (ReadingNote note : score.readingNotes()) {
      JsonObject json = new JsonObject();
      json.addProperty("offset", note.byteOffset());
      json.addProperty("sentence", note.sentence());
      notes.add(json);
    }
    return notes;
  }

  private static JsonArray suggestions(ScoreSummary about, int figures) {
    JsonArray suggestions = new JsonArray();
    for (Suggestion suggestion : about.suggestions().stream().limit(figures).toList()) {
      JsonObject json = new JsonObject();
      json.addProperty("notes", suggestion.notes());
      json.addProperty("part", about.music().score().parts().get(suggestion.part()).name());
      JsonArray bars = new JsonArray();
      suggestion.returns().forEach(tick -> bars.add(about.music().bars().barAt(tick).number()));
      json.add("bars", bars);
      json.addProperty("range", suggestion.range());
      json.addProperty("accompanies", suggestion.accompanies());
      suggestions.add(json);
    }
    return suggestions;
  }
}
