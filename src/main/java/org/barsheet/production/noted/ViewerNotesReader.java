package org.barsheet.production.noted;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.PlainText;
import org.barsheet.input.Problem;

/** Reads the notes that the review page saves, as CSV or as JSON. */
public final class ViewerNotesReader {

  static final int LONGEST_NOTE = 4_000;
  private static final String SAVE_AGAIN = "save the notes again from the review page";

  private final String file;
  private final List<ViewerNote> notes = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private ViewerNotesReader(String file) {
    this.file = file;
  }

  /**
   * The notes of a file.
   *
   * @throws InputException with every line that is no note
   */
  public static List<ViewerNote> read(Path path) {
    ViewerNotesReader reader = new ViewerNotesReader(path.toString());
    String text = reader.text(path);
    if (path.toString().endsWith(".json")) {
      reader.json(text);
    } else {
      reader.csv(text);
    }
    if (!reader.problems.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return List.copyOf(reader.notes);
  }

  private String text(Path path) {
    byte[] bytes = GivenFile.bytes(path, Limit.NOTES);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException other) {
      throw damage("the file is not UTF-8");
    }
  }

  private InputException damage(String sentence) {
    return new InputException(Problem.ofFile(file, sentence, SAVE_AGAIN));
  }

  private void csv(String text) {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      if (!parser.getHeaderNames().containsAll(List.of("frame", "note"))) {
        throw damage("the first line does not name the columns frame and note");
      }
      for (CSVRecord row : parser) {
        String line = "line " + parser.getCurrentLineNumber();
        add(line, cell(row, "frame"), cell(row, "panel"), cell(row, "note"));
      }
    } catch (IOException | UncheckedIOException | IllegalArgumentException wrong) {
      throw damage("a quote is not closed, or a column appears twice");
    }
  }

  private static String cell(CSVRecord row, String column) {
    return row.isSet(column) ? typed(row.get(column)) : "";
  }

  /** The page puts an apostrophe before words that a spreadsheet would take for a formula. */
  private static String typed(String cell) {
    return cell.matches("(?s)'[=+\\-@\\t\\r].*") ? cell.substring(1) : cell;
  }

  private void json(String text) {
    try {
      JsonObject root = JsonParser.parseString(text).getAsJsonObject();
      if (!field(root, "format").equals("barsheet-notes")) {
        throw damage("these are not notes from the review page");
      }
      int number = 0;
      JsonElement list = root.get("notes");
      if (list == null) {
        throw damage("the file holds no list of notes");
      }
      for (JsonElement each : list.getAsJsonArray()) {
        JsonObject note = each.getAsJsonObject();
        number++;
        add("note " + number, field(note, "frame"), field(note, "panel"), field(note, "note"));
      }
    } catch (JsonParseException | IllegalStateException wrong) {
      throw damage("the file is damaged: this is not a list of notes");
    }
  }

  /** A value of a group as text, "" where there is none. */
  static String field(JsonObject object, String name) {
    return Optional.ofNullable(object.get(name))
        .filter(JsonElement::isJsonPrimitive)
        .map(JsonElement::getAsJsonPrimitive)
        .map(JsonPrimitive::getAsString)
        .orElse("");
  }

  /** A note as findings print it. */
  static String onOneLine(String words) {
    return PlainText.of(words).replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
  }

  private void add(String where, String frame, String panel, String words) {
    String text = onOneLine(words);
    if (!frame.strip().matches("\\d{1,9}")) {
      problems.add(
          Problem.at(
              file,
              where,
              "'" + frame + "' is not a film frame",
              "write a whole number, 0 or more"));
    } else if (text.length() > LONGEST_NOTE) {
      problems.add(
          Problem.at(file, where, "the note is longer than 4,000 characters", "split it in two"));
    } else if (!text.isEmpty()) {
      notes.add(
          new ViewerNote(
              Long.parseLong(frame.strip()),
              PlainText.of(panel).replaceAll("\\p{Cntrl}", "").strip(),
              text));
    }
  }
}
