package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person is told about files that a plan names and that cannot be used. */
class InputFilesTest {

  @TempDir private Path folder;

  private List<Problem> problems(String score) throws IOException {
    Path plan = folder.resolve("plan.yaml");
    Files.writeString(
        plan,
        "title: Quay\nscore: "
            + score
            + "\nfilm: {frame-rate: 24}\nmusic:\n  recording: mix.wav\n"
            + "panels: [{panel: 1, action: Fog}]\n");
    InputException refused =
        catchThrowableOfType(
            InputException.class, () -> Production.film(plan, folder, Progress.SILENT));
    assertThat(refused).isNotNull();
    return refused.problems();
  }

  @Test
  void a_missing_score_and_a_missing_recording_are_told_together() throws IOException {
    List<Problem> problems = problems("none.mid");
    assertThat(problems).hasSize(2);
    assertThat(problems.get(0).sentence()).contains("there is no file").contains("none.mid");
    assertThat(problems.get(1).position()).startsWith("line 5");
    assertThat(problems.get(1).sentence())
        .isEqualTo("recording: there is no file " + folder.resolve("mix.wav"));
    assertThat(problems.get(1).remedy()).contains("seen from the plan's folder");
  }

  @Test
  void a_recording_that_is_no_sound_is_told() throws IOException {
    Files.copy(Path.of("scores", "lamplighters-quay.mid"), folder.resolve("quay.mid"));
    Files.writeString(folder.resolve("mix.wav"), "a letter about the mix");
    List<Problem> problems = problems("quay.mid");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).sentence()).endsWith("mix.wav is not a sound file");
    assertThat(problems.get(0).remedy()).contains("WAV, MP3");
  }
}
