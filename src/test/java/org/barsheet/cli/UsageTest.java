package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A command line that is wrong is told in our own words, with the help to ask for. */
class UsageTest {

  @Test
  void no_command_at_all_is_told_every_command() {
    StringWriter err = new StringWriter();
    assertThat(Barsheet.run(new PrintWriter(new StringWriter()), new PrintWriter(err)))
        .isEqualTo(ExitStatus.USAGE);
    assertThat(err.toString())
        .startsWith(
            "barsheet: name a command: make, check, about, show, find, beats, follow, where, compare,"
                + " adopt, begin, desk, photographs, pack or completion\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "chek plan.yaml | barsheet: there is no command chek; did you mean check?",
        "nonsense | barsheet: there is no command nonsense",
        "check | barsheet check: PLAN is missing",
        "where plan.yaml | barsheet where: PLACE is missing",
        "check plan.yaml --failon error | barsheet check: there is no option --failon; did you"
            + " mean --fail-on?",
        "check plan.yaml --fail-on bad | barsheet check: --fail-on: 'bad' is not one of remark,"
            + " warning, error",
        "check plan.yaml --fail-on | barsheet check: LEVEL behind --fail-on is missing",
        "check plan.yaml --alternatives five | barsheet check: --alternatives: 'five' is not a"
            + " whole number",
        "check plan.yaml --format xml | barsheet check: --format: 'xml' is not one of text, csv,"
            + " json",
        "make my plan.yaml | barsheet make: 'plan.yaml' is one word too many; put names with"
            + " spaces in quotes",
        "begin score.mid --out plan.txt | barsheet begin: --out: 'plan.txt' ends with neither"
            + " .yaml nor .xlsx",
      })
  void is_told_in_one_line(String words, String told) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    assertThat(Barsheet.run(new PrintWriter(out), new PrintWriter(err), words.split(" ", -1)))
        .isEqualTo(ExitStatus.USAGE);
    assertThat(err.toString().lines().toList().get(0)).isEqualTo(told);
    assertThat(err.toString()).contains("\n  help: barsheet").doesNotContain("Invalid");
    assertThat(out.toString()).isEmpty();
  }
}
