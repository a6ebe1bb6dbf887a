package org.barsheet.production.noted;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.PlainText;
import org.barsheet.input.Problem;
import org.barsheet.ticks.Mark;
import org.barsheet.ticks.Tick;
import org.barsheet.ticks.Tick.Source;
import org.barsheet.ticks.Ticked;

/** The ticks that the card for the phone saves. */
public final class PhoneTicks {

  private static final String FORMAT = "barsheet-taken";
  private static final String DAMAGED = "it is damaged";

  private final List<Tick> ticks = new ArrayList<>();
  private final List<Ticked.Note> notes = new ArrayList<>();
  private final List<Ticked.Unread> unread = new ArrayList<>();

  private PhoneTicks() {}

  /** What a file says; of one that cannot be read nothing but that. */
  public static Ticked read(Path file) {
    PhoneTicks reader = new PhoneTicks();
    try {
      String text = new String(GivenFile.bytes(file, Limit.NOTES), StandardCharsets.UTF_8);
      JsonObject root = JsonParser.parseString(text).getAsJsonObject();
      if (!ViewerNotesReader.field(root, "format").equals(FORMAT)) {
        return unread(file, "it doesn't come from the card for the phone");
      }
      if (!(root.get("taken") instanceof JsonArray taken)) {
        return unread(file, DAMAGED);
      }
      taken.forEach(each -> reader.add(file, each.getAsJsonObject()));
      return new Ticked(reader.ticks, reader.notes, reader.unread, Map.of());
    } catch (InputException refused) {
      Problem first = refused.problems().get(0);
      return unread(file, first.sentence());
    } catch (JsonParseException | IllegalStateException damaged) {
      return unread(file, DAMAGED);
    }
  }

  private static Ticked unread(Path file, String why) {
    return new Ticked(
        List.of(),
        List.of(),
        List.of(
            new Ticked.Unread(
                file.getFileName() + " is ignored: " + why, "save it again from the phone")),
        Map.of());
  }

  private void add(Path file, JsonObject tick) {
    String photograph = PlainText.of(ViewerNotesReader.field(tick, "photograph")).strip();
    String note = ViewerNotesReader.onOneLine(ViewerNotesReader.field(tick, "note"));
    if (photograph.isEmpty()) {
      return;
    }
    for (Mark mark : Mark.values()) {
      if (mark.word().equals(ViewerNotesReader.field(tick, "mark"))) {
        ticks.add(
            new Tick(
                photograph,
                mark,
                Source.PHONE,
                Optional.of(ViewerNotesReader.field(tick, "likeness"))
                    .filter(one -> one.matches("[0-9a-f]{12}")),
                time(ViewerNotesReader.field(tick, "at"))));
      }
    }
    if (note.length() > ViewerNotesReader.LONGEST_NOTE) {
      unread.add(
          new Ticked.Unread(
              file.getFileName()
                  + ": the note on "
                  + photograph
                  + " is longer than 4,000 characters",
              "split it in two"));
    } else if (!note.isEmpty()) {
      notes.add(new Ticked.Note(photograph, note));
    }
  }

  private static Optional<LocalDateTime> time(String text) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(LocalDateTime.parse(text));
    } catch (DateTimeParseException noTime) {
      return Optional.empty();
    }
  }
}
