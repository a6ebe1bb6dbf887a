package org.barsheet.handoff;

import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidFilm.LaidAppearance;
import org.barsheet.changes.LaidFilm.LaidBar;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.changes.LaidFilm.LaidExposure;
import org.barsheet.changes.LaidFilm.LaidInput;
import org.barsheet.changes.LaidFilm.LaidReveal;
import org.barsheet.changes.LaidFilm.LaidShot;
import org.barsheet.changes.LaidIssue;
import org.barsheet.changes.LaidIssues;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;
import org.barsheet.input.SyntaxException;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.NotesText;

/** Reads back from {@code timing.json} what a later run needs of an earlier one. */
public final class TimingJsonReader {

  private TimingJsonReader() {}

  /**
   * Reads a {@code timing.json}.
   *
   * @throws InputException if it is missing, is no such file, is damaged, or was written by a later
   *     version
   */
  public static LaidFilm read(Path path) {
    JsonPlace root = parse(path);
    checkFormat(root);
    return laid(root);
  }

  /** A run, under the keys of a whole file. */
  private static LaidFilm laid(JsonPlace root) {
    JsonPlace film = root.get("film");
    FrameRate rate = rate(film);
    return new LaidFilm(
        film.get("title").text(),
        rate,
        timecode(rate, film.get("firstFrame")),
        film.get("lengthFrames").whole(),
        root.get("inputs").each(TimingJsonReader::input),
        root.find("music").map(NotesJson::read),
        root.get("bars").each(TimingJsonReader::bar),
        root.get("cues").each(TimingJsonReader::cue),
        root.get("shots").each(TimingJsonReader::shot),
        root.find("asked").map(asked -> asked.each(AskJson::read)).orElse(List.of()),
        root.get("appearances").each(TimingJsonReader::appearance),
        root.find("meant").map(meant -> meant.each(MeantJson::read)).orElse(List.of()),
        film.find("soundHeadSeconds").map(JsonPlace::small).orElse(0),
        new LaidIssues(
            root.find("issue").map(JsonPlace::text).orElse(""),
            root.find("issues")
                .map(issues -> issues.each(TimingJsonReader::issue))
                .orElse(List.of())),
        root.find("taken").map(TakenJson::likenesses).orElse(Map.of()));
  }

  private static LaidIssue issue(JsonPlace issue) {
    return new LaidIssue(issue.get("name").text(), laid(issue));
  }

  private static JsonPlace parse(Path path) {
    String file = path.toString();
    GivenFile.check(path, Limit.TIMING);
    try (BufferedReader text = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
      JsonReader json = new JsonReader(text);
      json.setStrictness(Strictness.STRICT);
      JsonPlace root = new JsonPlace(file, "", JsonParser.parseReader(json));
      if (json.peek() != JsonToken.END_DOCUMENT) {
        throw root.damage("there is extra text after the data");
      }
      return root;
    } catch (JsonParseException | CharacterCodingException damaged) {
      throw new InputException(
          Problem.ofFile(file, "the file is damaged: this is not JSON", JsonPlace.REMEDY));
    } catch (IOException unreadable) {
      throw new InputException(
          Problem.ofFile(file, "the file is damaged or cut short", JsonPlace.REMEDY));
    }
  }

  private static void checkFormat(JsonPlace root) {
    JsonPlace format = root.get("format");
    if (!format.text().equals(TimingJson.FORMAT)) {
      throw format.damage("this is not a timing.json: its format is '" + format.text() + "'");
    }
    JsonPlace version = root.get("version");
    if (version.whole() != TimingJson.VERSION) {
      throw version.damage(
          "version "
              + version.whole()
              + " was written by another version of barsheet; this one reads version "
              + TimingJson.VERSION);
    }
  }

  private static FrameRate rate(JsonPlace film) {
    JsonPlace rate = film.get("frameRate");
    String spelled = rate.text() + (film.get("dropFrame").yesOrNo() ? "df" : "");
    try {
      return FrameRate.parse(spelled);
    } catch (SyntaxException unknown) {
      throw rate.damage(unknown.sentence());
    }
  }

  private static Timecode timecode(FrameRate rate, JsonPlace label) {
    try {
      return Timecode.parse(rate, label.text());
    } catch (SyntaxException unknown) {
      throw label.damage(unknown.sentence());
    }
  }

  private static LaidInput input(JsonPlace input) {
    return new LaidInput(input.get("file").text(), input.get("sha256").text());
  }

  private static LaidBar bar(JsonPlace bar) {
    return new LaidBar(bar.get("number").small(), bar.get("startFrame").whole());
  }

  static LaidCue cue(JsonPlace cue) {
    return new LaidCue(
        cue.get("id").text(),
        cue.get("kind").text(),
        cue.get("name").text(),
        cue.get("number").small(),
        cue.get("bar").small(),
        cue.get("beat").decimal(),
        seconds(cue.get("seconds").get("exact")),
        cue.get("frame").whole(),
        cue.get("form").text(),
        cue.find("notes")
            .filter(notes -> cue.get("kind").text().equals("return"))
            .map(notes -> held(cue, notes)));
  }

  private static HeldReturn held(JsonPlace cue, JsonPlace notes) {
    try {
      return new HeldReturn(
          cue.get("name").text(),
          cue.get("number").small(),
          cue.get("parts").each(JsonPlace::text),
          NotesText.notes(notes.text()));
    } catch (IllegalArgumentException unreadable) {
      throw notes.damage("these are not notes");
    }
  }

  private static Seconds seconds(JsonPlace exact) {
    try {
      return Seconds.parse(exact.text());
    } catch (IllegalArgumentException unreadable) {
      throw exact.damage("'" + exact.text() + "' is not a fraction of seconds");
    }
  }

  private static LaidShot shot(JsonPlace shot) {
    List<LaidReveal> reveals = shot.get("reveals").each(TimingJsonReader::reveal);
    return new LaidShot(
        shot.get("panel").text(),
        shot.get("cue").text(),
        shot.get("endFrameExclusive")
            .frames(shot.get("startFrame").whole(), shot.get("endFrameExclusive").whole()),
        reveals);
  }

  private static LaidAppearance appearance(JsonPlace seen) {
    long start = seen.get("startFrame").whole();
    return new LaidAppearance(
        seen.get("performer").text(),
        seen.get("opening").text(),
        seen.get("panel").text(),
        seen.get("endFrameExclusive").frames(start, seen.get("endFrameExclusive").whole()),
        seen.find("part").map(JsonPlace::text).orElse(""));
  }

  private static LaidReveal reveal(JsonPlace reveal) {
    return new LaidReveal(
        reveal.get("opening").text(),
        reveal.get("model").text(),
        reveal.get("layer").small(),
        reveal.get("accentFrame").whole(),
        reveal.get("landsFrame").whole(),
        reveal.get("firstGapFrame").whole(),
        reveal.get("exposures").each(TimingJsonReader::exposure));
  }

  private static LaidExposure exposure(JsonPlace exposure) {
    long start = exposure.get("startFrame").whole();
    return new LaidExposure(
        exposure.get("frames").frames(start, start + exposure.get("frames").whole()),
        exposure.get("photograph").text(),
        exposure.get("progress").decimal());
  }
}
