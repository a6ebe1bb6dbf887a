package org.barsheet.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.plan.edit.PlanTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fixes as conflicts tell them become the edits that make them. */
class FixEditsTest {

  @TempDir Path folder = Path.of("");

  private String fixes(String remedy) throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("plan.yaml"),
            """
            title: Quay
            score: quay.mid
            panels:
              - {panel: 1}
              - {panel: 12A, cue: bar 9, locked: yes, reveals: [{opening: gate}, {opening: lamp}]}
              - {panel: 3, reveals: {opening: lamp}}
            """);
    return new FixEdits(PlanTexts.read(plan).tree()).of(remedy).toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "put panel 12A on bar 7, 1 frame earlier | {'put':['panels',1,'cue'],'value':'bar 7'}",
        "put panel 3 on glimmer 4 (bar 21), 60 frames later | {'put':['panels',2,'cue'],'value':'glimmer 4'}",
        "let panel 3 shrink to 2 bars | {'put':['panels',2,'length'],'value':'2 bars'}",
        "let panel 3 grow to 40 f | {'put':['panels',2,'length'],'value':'40 f'}",
        "let panel 3 begin 2 bars into panel 12A | {'put':['panels',2,'cue'],'value':'2 bars into panel 12A'}",
        "leave out the cue of panel 12A | {'remove':['panels',1,'cue']}",
        "unlock panel 12A | {'remove':['panels',1,'locked']}",
        "give lamp in panel 12A at most 9 photographs on ones instead of 24 |"
            + " {'put':['panels',1,'reveals',1,'photographs'],'value':'9'},{'put':['panels',1,'reveals',1,'shown'],'value':'on ones'}",
        "give lamp in panel 3 at most 1 photograph on ones instead of 24 |"
            + " {'put':['panels',2,'reveals',0,'photographs'],'value':'1'},{'put':['panels',2,'reveals',0,'shown'],'value':'on ones'}",
      })
  void each_is_one_button(String words, String edits) throws IOException {
    assertThat(fixes(words).replace('"', '\''))
        .isEqualTo("[{'words':'" + words + "','edits':[" + edits + "]}]");
  }

  @Test
  void what_is_not_known_stays_words() throws IOException {
    assertThat(fixes("give these panels more room; or unlock panel 99"))
        .isEqualTo("[{\"words\":\"give these panels more room\"},{\"words\":\"unlock panel 99\"}]");
  }
}
