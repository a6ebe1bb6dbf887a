package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.barsheet.input.InputException;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.MidiBytes.Track;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackingTest {

  private static final String PANEL =
      "panels:\n  - {panel: 1, action: The first lamp, cue: bar 1, drawing: drawings/1.png}\n";

  @TempDir Path folder;

  private Path home;
  private Path zip;

  @BeforeEach
  void score() throws IOException {
    home = Files.createDirectories(folder.resolve("a film"));
    zip = folder.resolve("film.zip");
    MidiBytes.file().track(Track.scale(480)).into(home);
    Files.createDirectories(home.resolve("drawings"));
    Files.copy(Path.of("scores/panels/01.png"), home.resolve("drawings/1.png"));
  }

  private Path plan(String more) throws IOException {
    String score = "title: Quay\nscore: case.mid\nfilm: {frame-rate: 24}\n";
    return Files.writeString(home.resolve("quay.yaml"), score + more + PANEL);
  }

  private Packed pack(Path plan) {
    return Production.pack(plan, Production.defaultFolder(plan), zip);
  }

  @Test
  void what_the_plan_names_goes_in_and_nothing_that_lies_beside_it() throws IOException {
    Path plan = plan("");
    Files.writeString(home.resolve("letters.txt"), "private");
    Files.writeString(home.resolve("drawings/2.png"), "not of this film");
    assertThat(pack(plan).files()).containsExactly("case.mid", "drawings/1.png", "quay.yaml");
  }

  @Test
  void photographs_taken_go_in_with_their_copies() throws IOException {
    Path plan = plan("");
    Path photographs = Files.createDirectories(home.resolve("photographs"));
    for (String name :
        List.of("artwork as in panel 1.JPG", "small/artwork as in panel 1.jpg", "party.jpg")) {
      Files.createDirectories(photographs.resolve(name).getParent());
      Files.writeString(photographs.resolve(name), "taken");
    }
    assertThat(pack(plan).files())
        .contains(
            "photographs/artwork as in panel 1.JPG", "photographs/small/artwork as in panel 1.jpg")
        .doesNotContain("photographs/party.jpg");
  }

  @Test
  void of_the_sheets_folder_goes_in_what_make_writes_and_the_photographs() throws IOException {
    Path plan = plan("");
    Path sheets = Files.createDirectories(folder.resolve("elsewhere"));
    Files.createDirectories(sheets.resolve("photographs"));
    for (String name :
        List.of("timing.json.bak", "quay-kept-2.xlsx", "quay-notes.csv", "quay-guide.wav")) {
      Files.writeString(sheets.resolve(name), "");
    }
    Files.writeString(sheets.resolve("photographs/artwork as in panel 1.png"), "taken");
    Files.writeString(sheets.resolve("photographs/party.png"), "not of this film");
    assertThat(Production.pack(plan, sheets, zip).files())
        .containsExactly(
            "case.mid",
            "drawings/1.png",
            "quay-sheets/photographs/artwork as in panel 1.png",
            "quay-sheets/quay-guide.wav",
            "quay-sheets/quay-kept-2.xlsx",
            "quay-sheets/quay-notes.csv",
            "quay.yaml");
  }

  @Test
  void clips_go_in_from_their_folder_by_the_names_asked_for() throws IOException {
    Path plan = plan("clips: post\nperformers:\n  cello: {clip: cello.wav}\n");
    Files.createDirectories(home.resolve("post"));
    Files.writeString(home.resolve("post/cello.wav"), "");
    Files.writeString(home.resolve("post/other.wav"), "");
    assertThat(pack(plan).files()).contains("post/cello.wav").doesNotContain("post/other.wav");
  }

  @Test
  void every_file_is_listed_with_its_checksum() throws IOException {
    pack(plan(""));
    Path there = FolderCopy.unzip(zip, folder.resolve("there"));
    List<String> listed = Files.readAllLines(there.resolve("SHA256SUMS"));
    SortedMap<String, String> found = FolderCopy.checksums(there);
    found.remove("SHA256SUMS");
    assertThat(listed)
        .isEqualTo(found.entrySet().stream().map(e -> e.getValue() + "  " + e.getKey()).toList());
  }

  @Test
  void the_same_film_makes_the_same_zip() throws IOException {
    Path plan = plan("");
    pack(plan);
    byte[] first = Files.readAllBytes(zip);
    Files.delete(zip);
    pack(plan);
    assertThat(zip).hasBinaryContent(first);
  }

  @Test
  void a_file_of_this_name_stays() throws IOException {
    Path plan = plan("");
    Files.writeString(zip, "kept");
    assertThatThrownBy(() -> pack(plan))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("film.zip");
    assertThat(zip).hasContent("kept");
  }

  @Test
  void a_file_that_is_not_there_is_named() throws IOException {
    Path plan = plan("");
    Files.delete(home.resolve("drawings/1.png"));
    assertThat(pack(plan).missing())
        .singleElement()
        .satisfies(file -> assertThat(file).endsWithRaw(Path.of("drawings/1.png")));
  }

  @Test
  void files_outside_the_plans_folder_are_refused_all_by_name() throws IOException {
    Path plan = plan("");
    Path score = home.resolve("case.mid");
    String text = Files.readString(plan).replace("drawings/1.png", "../1.png");
    Files.copy(Path.of("scores/panels/01.png"), folder.resolve("1.png"));
    Files.writeString(plan, text.replace("score: ", "score: " + home + "/"));
    assertThat(score).exists();
    assertThatThrownBy(() -> pack(plan))
        .isInstanceOfSatisfying(
            InputException.class,
            refused ->
                assertThat(refused.problems())
                    .hasSize(2)
                    .anySatisfy(problem -> assertThat(problem.sentence()).contains("1.png"))
                    .anySatisfy(
                        problem -> assertThat(problem.sentence()).contains(score.toString())));
    assertThat(zip).doesNotExist();
  }
}
