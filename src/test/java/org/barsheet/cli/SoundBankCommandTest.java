package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.barsheet.score.MidiBytes;
import org.barsheet.sound.SoundFontBytes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code make --sound-bank} as a program of its own, with a home folder of its own. */
class SoundBankCommandTest {

  /** What the jar's manifest says. */
  private static final String DOOR = "java.desktop/com.sun.media.sound=ALL-UNNAMED";

  @TempDir private Path folder;
  private Path plan = Path.of("");
  private Path bank = Path.of("");
  private Path home = Path.of("");

  @BeforeEach
  void writePlanAndBank() throws IOException {
    MidiBytes.Track track = MidiBytes.Track.scale(480);
    MidiBytes.write(folder, MidiBytes.file().track(track).bytes());
    plan = folder.resolve("plan.yaml");
    bank = folder.resolve("tone.sf2");
    home = Files.createDirectory(folder.resolve("home"));
    try (Stream<Path> files = Files.list(folder)) {
      Path score = files.filter(file -> file.toString().endsWith(".mid")).findFirst().orElseThrow();
      Files.writeString(
          plan,
          "title: Quay\nscore: "
              + score.getFileName()
              + "\nfilm: {frame-rate: 24}\n"
              + "panels: [{panel: 1}]\n");
    }
    Files.write(bank, SoundFontBytes.of(List.of(new SoundFontBytes.Preset(0, 0, "Tone"))));
  }

  /** What a run of barsheet says and does. */
  private record Run(int status, String told) {}

  private Run make(List<String> javaOptions, String... more)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true"));
    command.add("-Duser.home=" + home);
    command.addAll(javaOptions);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(Barsheet.class.getName(), "make", plan.toString()));
    command.addAll(List.of(more));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Run(process.waitFor(), told);
  }

  @Test
  void the_guide_is_played_with_the_bank_and_nothing_else_is_made_or_kept()
      throws IOException, InterruptedException {
    List<String> open = List.of("--add-exports", DOOR);
    Run run = make(open, "--sound-bank", bank.toString());
    assertThat(run.status()).as(run.told()).isEqualTo(ExitStatus.DONE);
    assertThat(run.told())
        .contains("plan-guide.wav", "the guide is played with tone.sf2")
        .doesNotContain("INFO", "WARN");
    byte[] guide = Files.readAllBytes(folder.resolve("plan-sheets/plan-guide.wav"));
    byte[] click = Files.readAllBytes(folder.resolve("plan-sheets/plan-click.wav"));
    try (Stream<Path> kept = Files.walk(home)) {
      assertThat(kept.filter(Files::isRegularFile).map(Path::toString))
          .noneMatch(file -> file.contains("gervill") || file.contains("Prefs"));
    }
    assertThat(make(List.of(), "--sound").status()).isEqualTo(ExitStatus.DONE);
    assertThat(Files.readAllBytes(folder.resolve("plan-sheets/plan-click.wav"))).isEqualTo(click);
    assertThat(Files.readAllBytes(folder.resolve("plan-sheets/plan-guide.wav")))
        .isNotEqualTo(guide);
  }

  @Test
  void a_java_that_keeps_its_synthesizer_closed_is_told_before_anything_is_written()
      throws IOException, InterruptedException {
    Run run = make(List.of(), "--sound-bank", bank.toString());
    assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(run.told())
        .contains("keeps its synthesizer closed", "start barsheet with java -jar", DOOR);
    assertThat(folder.resolve("plan-sheets")).doesNotExist();
  }

  @Test
  void a_bank_that_is_not_there_is_told_before_anything_is_written()
      throws IOException, InterruptedException {
    Run run = make(List.of(), "--sound-bank", folder.resolve("lost.sf2").toString());
    assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(run.told()).startsWith(folder.resolve("lost.sf2") + ": there is no such file\n");
    assertThat(folder.resolve("plan-sheets")).doesNotExist();
  }
}
