package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.Track;
import org.barsheet.plan.Plan;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's score grows by four bars, or loses two, and a plan follows it. */
class AdoptCommandTest {

  private static final Path SCORE = Path.of("scores", "lamplighters-quay.mid").toAbsolutePath();

  /** Of bar 20 of the demo: its meter is 4/4, and bar 0 is a pickup of one beat. */
  private static final int BEAT_OF_BAR_20 = 1 + 19 * 4;

  private static final String PLAN =
      """
      # The director's own words.
      title: Two flaps
      score: quay.mid          # from the composer
      film: {frame-rate: 24, music-starts: 2 s}
      motifs:
        glimmer: {heard-at: {place: bar 9, length: 5 beats, part: Celesta}, accent: last}
      panels:
        - {panel: 1, action: Nothing moves}
        - {panel: 2, action: "A flap: opens", cue: glimmer near bar 13}
        - panel: 3
          cue: 'bar 21 beat 3' # the ferry
        - {panel: 4, cue: glimmer near bar 33, cut: bar 30}
        - {panel: 5, cue: 6 bars into panel 4}
      """;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private Path plan = Path.of("");

  @BeforeEach
  void aFilmThatWasMade() throws IOException {
    plan = Files.writeString(folder.resolve("plan.yaml"), PLAN);
    Files.copy(SCORE, folder.resolve("quay.mid"));
    assertThat(run("make", plan)).as(err.toString()).isEqualTo(ExitStatus.DONE);
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
  }

  private int run(Object... words) {
    String[] arguments = Arrays.stream(words).map(Object::toString).toArray(String[]::new);
    return Barsheet.run(new PrintWriter(out), new PrintWriter(err), arguments);
  }

  /** The demo's score with beats put in before a beat, or, where fewer than 0, taken out there. */
  private Path revised(int beat, int beats) throws IOException {
    try {
      Sequence sequence = MidiSystem.getSequence(SCORE.toFile());
      long from = (long) beat * sequence.getResolution();
      long later = (long) beats * sequence.getResolution();
      for (Track track : sequence.getTracks()) {
        for (int i = track.size() - 1; i >= 0; i--) {
          MidiEvent event = track.get(i);
          boolean gone = event.getTick() >= from && event.getTick() < from - later;
          boolean note = (event.getMessage().getStatus() & 0xE0) == 0x80;
          if (gone && note) {
            track.remove(event);
          }
        }
        for (int i = 0; i < track.size(); i++) {
          MidiEvent event = track.get(i);
          if (event.getTick() >= from) {
            event.setTick(Math.max(from, event.getTick() + later));
          }
        }
      }
      Path file = folder.resolve("new.mid");
      MidiSystem.write(sequence, 1, file.toFile());
      return file;
    } catch (InvalidMidiDataException impossible) {
      throw new AssertionError(impossible);
    }
  }

  @Test
  void everything_moves_with_its_music_and_nothing_else_in_the_plan_changes() throws IOException {
    Path now = revised(BEAT_OF_BAR_20, 16);
    assertThat(run("adopt", plan, now)).as(err.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(plan)
        .hasContent(
            PLAN.replace("quay.mid ", "new.mid ")
                .replace("'bar 21 beat 3'", "'bar 25 beat 3'")
                .replace("near bar 33", "near bar 37")
                .replace("cut: bar 30", "cut: bar 34"));
    assertThat(folder.resolve("plan-kept-1.yaml")).hasContent(PLAN);
    assertThat(out.toString().lines().map(line -> line.replaceAll(" +", " ")))
        .containsExactly(
            "place before now",
            "score quay.mid new.mid",
            "motif glimmer heard-at bar 9 the same",
            "panel 2 cue glimmer near bar 13 (bar 13) the same",
            "panel 3 cue bar 21 beat 3 bar 25 beat 3",
            "panel 4 cue glimmer near bar 33 (bar 33) glimmer near bar 37 (bar 37)",
            "panel 4 cut bar 30 bar 34",
            "panel 5 cue 6 bars into panel 4 the same");
    assertThat(err.toString()).contains("4 changes").contains("plan-kept-1.yaml");
  }

  @Test
  void bars_that_are_gone_are_asked_about_and_left_as_they_were() throws IOException {
    Path now = revised(BEAT_OF_BAR_20 + 4, -4);
    assertThat(run("adopt", plan, now)).isEqualTo(ExitStatus.FINDINGS);
    assertThat(plan).content().contains("'bar 21 beat 3' # the ferry").contains("near bar 32");
    assertThat(out.toString())
        .contains("panel 3 cue: bar 21 beat 3 is gone.\n")
        .contains("  Write another place; nearest: bar 20, bar 21.\n");
    assertThat(err.toString()).contains("1 left for you to decide");
  }

  @Test
  void a_preview_writes_nothing_and_says_all_of_it_to_programs_too() throws IOException {
    Path now = revised(BEAT_OF_BAR_20, 16);
    assertThat(run("adopt", plan, now, "--preview", "--format", "csv")).isEqualTo(ExitStatus.DONE);
    assertThat(plan).hasContent(PLAN);
    assertThat(folder.resolve("plan-kept-1.yaml")).doesNotExist();
    assertThat(out.toString())
        .contains("panel 4 cue,glimmer near bar 33,bar 33,glimmer near bar 37,bar 37,false,,\n");
    assertThat(err.toString()).contains("Nothing written");
  }

  @Test
  void the_file_of_the_version_before_may_be_overwritten() throws IOException {
    Path now = folder.resolve("quay.mid");
    Files.copy(revised(BEAT_OF_BAR_20, 16), now, StandardCopyOption.REPLACE_EXISTING);
    assertThat(run("adopt", plan, now)).isEqualTo(ExitStatus.DONE);
    assertThat(plan).content().contains("score: quay.mid          # from the composer", "bar 25");
  }

  @Test
  void afterwards_nothing_stands_on_other_music() throws IOException {
    Path now = folder.resolve("quay.mid");
    Files.copy(revised(BEAT_OF_BAR_20, 16), now, StandardCopyOption.REPLACE_EXISTING);
    run("check", plan);
    assertThat(out.toString()).contains("panel 3", "asks for bar 21 beat 3: that is bar 25 beat 3");
    run("adopt", plan, now);
    out.getBuffer().setLength(0);
    assertThat(run("check", plan)).isEqualTo(ExitStatus.DONE);
    assertThat(out.toString())
        .contains("panel")
        .doesNotContain(" asks for ", " cuts at ", "is heard at");
  }

  @Test
  void a_plan_that_was_adopted_already_stays_as_it_is() throws IOException {
    Path now = revised(5, 16);
    run("adopt", plan, now);
    String adopted = Files.readString(plan);
    assertThat(adopted).contains("place: bar 13", "bar 25 beat 3");
    assertThat(run("adopt", plan, now)).isEqualTo(ExitStatus.DONE);
    assertThat(plan).hasContent(adopted);
    assertThat(folder.resolve("plan-kept-2.yaml")).doesNotExist();
  }

  @Test
  void a_file_that_was_overwritten_is_adopted_only_once_too() throws IOException {
    Path now = folder.resolve("quay.mid");
    Files.copy(revised(BEAT_OF_BAR_20, 16), now, StandardCopyOption.REPLACE_EXISTING);
    run("adopt", plan, now);
    String adopted = Files.readString(plan);
    assertThat(run("adopt", plan, now)).isEqualTo(ExitStatus.DONE);
    assertThat(plan).hasContent(adopted);
  }

  @Test
  void sheets_made_of_the_new_version_before_it_was_adopted_do_no_harm() throws IOException {
    Path now = folder.resolve("quay.mid");
    Files.copy(revised(BEAT_OF_BAR_20, 16), now, StandardCopyOption.REPLACE_EXISTING);
    assertThat(run("make", plan)).as(err.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(run("adopt", plan, now)).isEqualTo(ExitStatus.DONE);
    assertThat(plan).content().contains("bar 25 beat 3", "glimmer near bar 37", "cut: bar 34");
  }

  @Test
  void a_plan_in_a_spreadsheet_follows_too() throws IOException {
    Path book = folder.resolve("book.xlsx");
    Entry.Keyed tree = PlanSource.read(new PlanReading(plan));
    Files.write(book, new BookWriter(tree, List.of()).bytes());
    assertThat(run("make", book)).as(err.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(run("adopt", book, revised(BEAT_OF_BAR_20, 16))).isEqualTo(ExitStatus.DONE);
    Plan adopted = PlanReader.read(book);
    assertThat(adopted.music().score()).hasFileName("new.mid");
    assertThat(adopted.panels())
        .extracting(panel -> panel.cue().toString())
        .containsExactly(
            "",
            "glimmer near bar 13",
            "bar 25 beat 3",
            "glimmer near bar 37",
            "6 bars into panel 4");
    assertThat(folder.resolve("book-kept-1.xlsx")).exists();
  }

  @Test
  void a_table_of_panels_follows_and_both_files_are_kept() throws IOException {
    String panels = "panel;cue;cut\r\n1;;\r\n2;\"bar 21\";\r\n3;bar 30;bar 28\r\n";
    Path table = Files.writeString(folder.resolve("panels.csv"), panels);
    String head = PLAN.substring(0, PLAN.indexOf("panels:"));
    Path with = Files.writeString(folder.resolve("with.yaml"), head + "panels: panels.csv\n");
    assertThat(run("make", with)).as(err.toString()).isEqualTo(ExitStatus.DONE);
    assertThat(run("adopt", with, revised(BEAT_OF_BAR_20, 16))).isEqualTo(ExitStatus.DONE);
    assertThat(table).hasContent("panel;cue;cut\r\n1;;\r\n2;\"bar 25\";\r\n3;bar 34;bar 32\r\n");
    assertThat(folder.resolve("panels-kept-1.csv")).hasContent(panels);
    assertThat(folder.resolve("with-kept-1.yaml")).exists();
  }

  @Test
  void without_sheets_of_the_version_before_it_says_what_to_run_first() throws IOException {
    Path now = revised(BEAT_OF_BAR_20, 16);
    assertThat(run("adopt", plan, now, "--out", folder.resolve("elsewhere")))
        .isEqualTo(ExitStatus.BAD_INPUT);
    assertThat(err.toString()).contains("elsewhere has none").contains("barsheet make");
    assertThat(plan).hasContent(PLAN);
  }
}
