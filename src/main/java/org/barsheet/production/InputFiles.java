package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.clips.SoundFile;
import org.barsheet.clips.UnreadableClipException;
import org.barsheet.film.InputFile;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Recording;
import org.barsheet.text.Sha256;

/** Looks whether the score and the recording that a plan names are there. */
final class InputFiles {

  private InputFiles() {}

  /** Refuses a plan whose score or recording is missing, or whose recording does not sound. */
  static void check(Plan plan) {
    List<Problem> problems = new ArrayList<>();
    if (!Files.exists(plan.music().score())) {
      problems.add(
          Problem.at(
              plan.text().file().toString(),
              "score",
              "there is no file " + plan.music().score(),
              "put the MIDI file beside the plan, or write its path after 'score:'"));
    }
    plan.music().recording().flatMap(InputFiles::problem).ifPresent(problems::add);
    plan.panels().stream().flatMap(panel -> drawing(panel).stream()).forEach(problems::add);
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  /** A drawing that is not there yet is left out of the sheets; one that is must be readable. */
  private static Optional<Problem> drawing(Panel panel) {
    return panel
        .drawing()
        .filter(Files::exists)
        .flatMap(file -> GivenFile.problem(file, Limit.DRAWING))
        .map(
            problem ->
                Problem.at(
                    panel.where().file(),
                    panel.where().position(),
                    "panel "
                        + panel.name()
                        + ", drawing "
                        + problem.file()
                        + ": "
                        + problem.sentence(),
                    problem.remedy()));
  }

  private static Optional<Problem> problem(Recording recording) {
    String name = "recording: " + recording.file();
    if (!Files.isRegularFile(recording.file())) {
      String remedy = "put the sound file there, or write its path, seen from the plan's folder";
      return told(recording, "recording: there is no file " + recording.file(), remedy);
    }
    try {
      SoundFile.check(recording.file());
      return Optional.empty();
    } catch (UnreadableClipException wrong) {
      String remedy = "name a sound file that browsers play: WAV, MP3, M4A, FLAC or Ogg";
      return told(recording, name + " " + wrong.reason(), remedy);
    } catch (IOException unreadable) {
      return told(
          recording, name + " cannot be read", "check that you're allowed to open this file");
    }
  }

  private static Optional<Problem> told(Recording recording, String sentence, String remedy) {
    return Optional.of(
        Problem.at(recording.where().file(), recording.where().position(), sentence, remedy));
  }

  /**
   * The files a film is made from: the plan, the score, the panels' own table where there is one.
   */
  static List<InputFile> of(Plan plan) {
    List<InputFile> inputs = new ArrayList<>();
    inputs.add(input("plan", plan.text().file()));
    inputs.add(input("score", plan.music().score()));
    plan.text().table().ifPresent(table -> inputs.add(input("panels", table)));
    return inputs;
  }

  private static InputFile input(String role, Path file) {
    try {
      String sha256 = Sha256.hex(Files.readAllBytes(file));
      return new InputFile(role, String.valueOf(file.getFileName()), sha256);
    } catch (IOException e) {
      throw new InputException(
          Problem.ofFile(
              file.toString(), "this file cannot be read", "check that it is still there"));
    }
  }
}
